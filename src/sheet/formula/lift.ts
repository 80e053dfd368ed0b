/** What takes scalars, over arrays: once a cell of the arguments' common shape. */
import { ArrayValue, boundedSize, ERRORS, type Scalar } from '../values';

export interface Ticking {
  tick(steps?: number): void;
}

/**
 * Single rows, columns and cells repeat; a cell outside one of the others is `#N/A`. `call` is given the scalars of a
 * cell in the order of `args`.
 */
export function lift(
  clock: Ticking,
  args: readonly (Scalar | ArrayValue)[],
  call: (scalars: Scalar[]) => Scalar,
): ArrayValue {
  let rows = 1;
  let columns = 1;
  let storedRows = 1;
  let isUniform = true;
  for (const arg of args) {
    if (!(arg instanceof ArrayValue)) continue;
    rows = Math.max(rows, arg.rows);
    columns = Math.max(columns, arg.columns);
    storedRows = Math.max(storedRows, arg.storedRows);
  }
  // Rows beyond all stored ones are all the same, unless an argument has other columns or ends before.
  for (const arg of args) {
    if (!(arg instanceof ArrayValue) || (arg.rows === 1 && arg.columns === 1)) continue;
    if (arg.rows !== rows || (arg.columns !== columns && arg.columns !== 1)) isUniform = false;
  }
  if (!isUniform) storedRows = rows;
  const cells = new Array<Scalar>(boundedSize(storedRows, columns));
  const scalars = new Array<Scalar>(args.length);
  const at = (row: number, column: number): Scalar => {
    for (let i = 0; i < args.length; i++) {
      const arg = args[i];
      if (!(arg instanceof ArrayValue)) scalars[i] = arg ?? null;
      else {
        const r = arg.rows === 1 ? 0 : row;
        const c = arg.columns === 1 ? 0 : column;
        if (r >= arg.rows || c >= arg.columns) return ERRORS['#N/A'];
        scalars[i] = arg.at(r, c);
      }
    }
    return call(scalars);
  };
  for (let row = 0, place = 0; row < storedRows; row++) {
    clock.tick(columns);
    for (let column = 0; column < columns; column++) cells[place++] = at(row, column);
  }
  return new ArrayValue(rows, columns, cells, rows > storedRows ? at(storedRows, 0) : null);
}
