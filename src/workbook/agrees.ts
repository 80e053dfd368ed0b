import { CellError, type CellValue } from '../cells/value';

/** Relative; two ways of calculating the same differ by less. */
const AGREES = 1e-9;

/** Whether two ways of calculating a cell came to the same. */
export function agrees(a: CellValue, b: CellValue): boolean {
  if (a instanceof CellError || b instanceof CellError)
    return a instanceof CellError && b instanceof CellError;
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= AGREES * Math.max(Math.abs(a), Math.abs(b)) || Math.abs(a - b) < 1e-13;
  return (a ?? 0) === (b ?? 0);
}
