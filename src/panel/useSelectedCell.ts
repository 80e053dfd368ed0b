import { useEffect, useState } from 'react';
import type { CellView, Host, Range } from './host';

export interface SelectedCell extends CellView {
  readonly range: Range;
}

/** The active cell, kept up to date; undefined while there is none. */
export function useSelectedCell(host: Host): SelectedCell | undefined {
  const [cell, setCell] = useState<SelectedCell>();
  useEffect(() => {
    let asked = 0;
    const look = async () => {
      const turn = ++asked;
      const selected = await host.readSelection();
      const range = selected && { ...selected, rows: 1, columns: 1 };
      const view = range && (await host.read(range))[0]?.[0];
      // An answer that was overtaken by a later question is old.
      if (turn === asked) setCell(range && view && { ...view, range });
    };
    // The sheet may go while it is read, when another workbook is opened: that calls back as well.
    const lookAgain = () => void look().catch(() => undefined);
    lookAgain();
    const stop = host.onSelectionChange(lookAgain);
    return () => {
      asked = -1;
      stop();
    };
  }, [host]);
  return cell;
}
