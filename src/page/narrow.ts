import { useSyncExternalStore } from 'react';

/** On a screen as narrow as this the panel lies over the sheet, and the bar takes two lines. */
export const NARROW = '@media (max-width: 700px)';

const media = (): MediaQueryList => window.matchMedia(NARROW.replace('@media ', ''));

const onChange = (listener: () => void): (() => void) => {
  const query = media();
  query.addEventListener('change', listener);
  return () => {
    query.removeEventListener('change', listener);
  };
};

export const useNarrow = (): boolean => useSyncExternalStore(onChange, () => media().matches);
