import { Refusal } from '../core/refusal';
import type { CellValue, Matrix } from '../cells/value';

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

export const shapeOf = (m: Matrix): Shape => ({ rows: m.length, columns: m[0]?.length ?? 0 });

const fits = (a: number, b: number): boolean => a === b || a === 1 || b === 1;
const shapeText = ({ rows, columns }: Shape): string => `${rows} × ${columns}`;

/**
 * The shape in which the arguments answer together: 1 × 1, 1 × n, n × 1 and n × m fit as a worksheet's own
 * operators do. Refuses the second of two arguments that do not fit.
 */
export function commonShape(args: readonly { readonly name: string; readonly shape: Shape }[]): Shape {
  let shape: Shape = { rows: 1, columns: 1 };
  let rowsFrom = '';
  let columnsFrom = '';
  for (const { name, shape: own } of args) {
    if (!fits(shape.rows, own.rows) || !fits(shape.columns, own.columns)) {
      const other = fits(shape.rows, own.rows) ? columnsFrom : rowsFrom;
      throw new Refusal(
        `is ${shapeText(own)} cells, which does not fit ${other} at ${shapeText(shape)}`,
        name,
      );
    }
    if (own.rows > shape.rows) rowsFrom = name;
    if (own.columns > shape.columns) columnsFrom = name;
    shape = { rows: Math.max(shape.rows, own.rows), columns: Math.max(shape.columns, own.columns) };
  }
  return shape;
}

/** The cell that stands at a place of the common shape; a single row, column or cell repeats. */
export function cellAt(m: Matrix, row: number, column: number): CellValue {
  const line = m[m.length === 1 ? 0 : row];
  return line?.[line.length === 1 ? 0 : column] ?? null;
}
