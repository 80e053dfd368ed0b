import { parseArea } from '../../cells/address';
import { CellError, type Matrix } from '../../cells/value';
import type { Look } from './chartData';

/** More points than pixels: the file's own values are drawn. */
const MOST_CELLS = 100_000;

/** Reads the cells of a chart by evaluating its references as formulas. */
export const lookWith =
  (evaluate: (formula: string) => Matrix): Look =>
  (reference) => {
    const area = parseArea(reference.slice(reference.lastIndexOf('!') + 1));
    const size = area ? (area.bottom - area.top + 1) * (area.right - area.left + 1) : undefined;
    // Whole rows and columns are no areas, and may be empty for a million cells.
    if ((size ?? 0) > MOST_CELLS || /\$?[A-Z]+:\$?[A-Z]+$|\$?\d+:\$?\d+$/i.test(area ? '' : reference))
      return undefined;
    let cells: Matrix;
    try {
      cells = evaluate(reference);
    } catch {
      return undefined;
    }
    const [first] = cells[0] ?? [];
    // What another file, several areas or a name of another program stand for cannot be read here.
    const isUnread = cells.length === 1 && size !== 1 && first instanceof CellError;
    return isUnread ? undefined : cells;
  };
