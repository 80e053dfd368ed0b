import type { Held, Journal } from '../../whatif/run';

const KEY = 'moldsheet.whatif.held';

export interface KeptJournal extends Journal {
  /** What a run that was torn off had not put back. */
  tornOff(): readonly Held[] | undefined;
}

/**
 * Keeps what varied inputs held where a closed panel leaves it, for workbooks that are varied themselves. All of them
 * share one store, so that the address tells whose it is: what one held must not be put into another.
 */
export const journalOf = (address: string): KeptJournal => {
  const key = `${KEY} ${address}`;
  return {
    note: (held) => {
      localStorage.setItem(key, JSON.stringify(held));
    },
    clear: () => {
      localStorage.removeItem(key);
    },
    tornOff: () => {
      const kept = localStorage.getItem(key);
      return kept === null ? undefined : (JSON.parse(kept) as Held[]);
    },
  };
};
