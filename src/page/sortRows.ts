import { CellError, type CellValue } from '../cells/value';

/** Numbers, then texts, then truth values, then errors, as spreadsheet programs sort. */
const rank = (value: CellValue): number => {
  if (typeof value === 'number') return 0;
  if (typeof value === 'string') return 1;
  return value instanceof CellError ? 3 : 2;
};

function compared(a: CellValue, b: CellValue): number {
  const byKind = rank(a) - rank(b);
  if (byKind !== 0) return byKind;
  if (typeof a === 'number' && typeof b === 'number') return a - b;
  return String(a).localeCompare(String(b), undefined, { sensitivity: 'base' });
}

/** The places of rows in their new order; equal ones keep theirs, and blank ones stay behind all others. */
export function sortedPlaces(keys: readonly CellValue[], descending: boolean): number[] {
  const isBlank = (at: number) => keys[at] === null || keys[at] === '';
  return keys
    .map((_, at) => at)
    .sort((a, b) => {
      if (isBlank(a) || isBlank(b)) return Number(isBlank(a)) - Number(isBlank(b));
      const order = compared(keys[a] ?? null, keys[b] ?? null);
      return descending ? -order : order;
    });
}
