import { Refusal } from '../core/refusal';
import type { CellValue, Matrix } from '../cells/value';

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

export const shapeOf = (m: Matrix): Shape => ({ rows: m.length, columns: m[0]?.length ?? 0 });

interface Shaped {
  readonly name: string;
  readonly shape: Shape;
}

const fits = (a: number, b: number): boolean => a === b || a === 1 || b === 1;
const shapeText = ({ rows, columns }: Shape): string => `${rows} × ${columns}`;

const doesNotFit = (arg: Shaped, other: Shaped): Refusal =>
  new Refusal(
    `is ${shapeText(arg.shape)} cells (rows × columns), which does not fit ${other.name} with ${shapeText(other.shape)}`,
    arg.name,
  );

/**
 * The shape in which the arguments answer together: 1 × 1, 1 × n, n × 1 and n × m fit as a worksheet's own
 * operators do. Refuses the second of two arguments that do not fit.
 */
export function commonShape(args: readonly Shaped[]): Shape {
  // The arguments that the rows and the columns of the answer come from.
  let tallest: Shaped = { name: '', shape: { rows: 1, columns: 1 } };
  let widest = tallest;
  for (const arg of args) {
    const { rows, columns } = arg.shape;
    if (!fits(tallest.shape.rows, rows)) throw doesNotFit(arg, tallest);
    if (!fits(widest.shape.columns, columns)) throw doesNotFit(arg, widest);
    if (rows > tallest.shape.rows) tallest = arg;
    if (columns > widest.shape.columns) widest = arg;
  }
  return { rows: tallest.shape.rows, columns: widest.shape.columns };
}

/** The cell that stands at a place of the common shape; a single row, column or cell repeats. */
export function cellAt(m: Matrix, row: number, column: number): CellValue {
  const line = m[m.length === 1 ? 0 : row];
  return line?.[line.length === 1 ? 0 : column] ?? null;
}
