import type { SharedCell } from './sharedCell';

/** What became of formulas, those first that need a look. */
const ORDER: readonly SharedCell['how'][] = ['refused', 'frozen', 'looked up', 'native', 'value'];

/** Formulas of which the same is to be said. */
export interface SharedReason {
  readonly why: string;
  readonly cells: readonly SharedCell[];
}

export interface SharedGroup {
  readonly how: SharedCell['how'];
  readonly cells: readonly SharedCell[];
  /** Each once, as they come up. */
  readonly reasons: readonly SharedReason[];
}

export const groupsOf = (cells: readonly SharedCell[]): SharedGroup[] =>
  ORDER.flatMap((how) => {
    const own = cells.filter((cell) => cell.how === how);
    if (own.length === 0) return [];
    const reasons = [...new Set(own.map(({ why }) => why))];
    return [
      {
        how,
        cells: own,
        reasons: reasons.map((why) => ({ why, cells: own.filter((one) => one.why === why) })),
      },
    ];
  });

const MOST_NAMED = 6;

/** Cells by name, `Seat!B1, B2, Plate!C4`, the first few. */
export function cellsInWords(cells: readonly Pick<SharedCell, 'sheet' | 'cell'>[]): string {
  const named = cells
    .slice(0, MOST_NAMED)
    .map(({ sheet, cell }, i) => (cells[i - 1]?.sheet === sheet ? cell : `${sheet}!${cell}`));
  const more = cells.length - named.length;
  return named.join(', ') + (more > 0 ? ` and ${more} more` : '');
}
