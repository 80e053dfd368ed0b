import { ArrayValue, Reference, raise, type Value } from '../values';
import { inContext } from './spec';

/** A part of a reference stays a reference, so that `INDEX(…):B3` and `SUM(INDEX(…))` read cells. */
export const INDEX = inContext('INDEX', 'Ann?n?', (context, from, row, column, area = 1): Value => {
  if (!(from instanceof Reference)) return partOfArray(context.array(from), row, column);
  const cells = from.areas[Math.trunc(area) - 1] ?? raise('#REF!');
  const part = choose(cells.bottom - cells.top + 1, cells.right - cells.left + 1, row, column);
  const top = cells.top + part.top;
  const left = cells.left + part.left;
  return new Reference([
    { sheet: cells.sheet, top, left, bottom: top + part.rows - 1, right: left + part.columns - 1 },
  ]);
});

function partOfArray(array: ArrayValue, row: number, column: number | undefined): Value {
  const part = choose(array.rows, array.columns, row, column);
  if (part.rows === 1 && part.columns === 1) return array.at(part.top, part.left);
  return ArrayValue.build(part.rows, part.columns, (r, c) => array.at(part.top + r, part.left + c));
}

/** Row or column 0 is all of them; a single row takes its one index as the column. */
function choose(rows: number, columns: number, row: number, column: number | undefined) {
  const isLine = column === undefined && rows === 1;
  const r = Math.trunc(isLine ? 0 : row);
  const c = Math.trunc(isLine ? row : (column ?? (columns === 1 ? 1 : 0)));
  if (r < 0 || c < 0) return raise('#VALUE!');
  if (r > rows || c > columns) return raise('#REF!');
  return {
    top: r === 0 ? 0 : r - 1,
    left: c === 0 ? 0 : c - 1,
    rows: r === 0 ? rows : 1,
    columns: c === 0 ? columns : 1,
  };
}
