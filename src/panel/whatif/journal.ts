import type { Held, Journal } from '../../workbook/whatif/run';

const KEY = 'moldsheet.whatif.held';

/** Keeps what varied inputs held where a closed panel leaves it, for workbooks that are varied themselves. */
export const journal: Journal = {
  note: (held) => {
    localStorage.setItem(KEY, JSON.stringify(held));
  },
  clear: () => {
    localStorage.removeItem(KEY);
  },
};

/** What a run that was torn off had not put back. */
export function tornOff(): readonly Held[] | undefined {
  const kept = localStorage.getItem(KEY);
  return kept === null ? undefined : (JSON.parse(kept) as Held[]);
}
