import { useEffect, useState } from 'react';
import type { Host, Separator } from './host';

/** What people type between arguments; undefined while it is not known, and where it is the comma for all. */
export function useSeparator(host: Host): Separator | undefined {
  const [separator, setSeparator] = useState<Separator>();
  useEffect(() => {
    let isWanted = true;
    // Not to know it is no harm: the comma of the help stands then.
    host.readSeparator?.().then(
      (found) => {
        if (isWanted) setSeparator(found);
      },
      () => undefined,
    );
    return () => {
      isWanted = false;
    };
  }, [host]);
  return separator;
}
