/** The functions that call a LAMBDA for each part of an array. LET and LAMBDA themselves are the compiler's. */
import { CellError } from '../../cells/value';
import {
  ArrayValue,
  boundedSize,
  ERRORS,
  Lambda,
  raise,
  Reference,
  type Scalar,
  type Value,
} from '../values';
import { inContext, type Context } from './spec';

/** Parts of a range stay ranges, so that ROW and SUBTOTAL work on them. */
class Parts {
  readonly rows: number;
  readonly columns: number;
  private readonly array: ArrayValue | undefined;

  constructor(
    context: Context,
    private readonly value: Value,
  ) {
    const [area, ...more] = value instanceof Reference ? value.areas : [];
    if (more.length > 0) raise('#VALUE!');
    this.array = area ? undefined : context.array(value);
    this.rows = area ? area.bottom - area.top + 1 : (this.array?.rows ?? 1);
    this.columns = area ? area.right - area.left + 1 : (this.array?.columns ?? 1);
    boundedSize(this.rows, this.columns);
  }

  cell(row: number, column: number): Value {
    return this.array ? this.array.at(row, column) : this.part(row, column, 1, 1);
  }

  part(top: number, left: number, rows: number, columns: number): Value {
    const { array, value } = this;
    if (array) return ArrayValue.build(rows, columns, (row, column) => array.at(top + row, left + column));
    const [area] = (value as Reference).areas;
    if (!area) return raise('#REF!');
    return new Reference([
      {
        sheet: area.sheet,
        top: area.top + top,
        left: area.left + left,
        bottom: area.top + top + rows - 1,
        right: area.left + left + columns - 1,
      },
    ]);
  }
}

const lambdaOf = (value: Value | undefined): Lambda =>
  value instanceof Lambda ? value : raise(value instanceof CellError ? value : '#VALUE!');

/** One result for one cell: an array in it is an error, as arrays do not nest. */
function scalarOf(context: Context, value: Value): Scalar {
  if (value instanceof Lambda) return ERRORS['#CALC!'];
  if (!(value instanceof Reference || value instanceof ArrayValue)) return value;
  const array = context.array(value);
  return array.size === 1 ? array.at(0, 0) : NESTED;
}

const NESTED = new CellError('#CALC!', 'An array cannot hold arrays.');

export const lambdas = [
  inContext('MAP', 'r(r)+', (context, ...args) => {
    const lambda = lambdaOf(args.at(-1));
    const arrays = args.slice(0, -1).map((arg) => new Parts(context, arg));
    const rows = Math.max(...arrays.map((one) => one.rows));
    const columns = Math.max(...arrays.map((one) => one.columns));
    return ArrayValue.build(rows, columns, (row, column) => {
      const cells = arrays.map((one) =>
        row < one.rows && column < one.columns ? one.cell(row, column) : ERRORS['#N/A'],
      );
      return scalarOf(context, lambda.call(cells));
    });
  }),
  inContext('BYROW', 'rr', (context, value, lambda) => {
    const parts = new Parts(context, value);
    const of = lambdaOf(lambda);
    return ArrayValue.build(parts.rows, 1, (row) =>
      scalarOf(context, of.call([parts.part(row, 0, 1, parts.columns)])),
    );
  }),
  inContext('BYCOL', 'rr', (context, value, lambda) => {
    const parts = new Parts(context, value);
    const of = lambdaOf(lambda);
    return ArrayValue.build(1, parts.columns, (_, column) =>
      scalarOf(context, of.call([parts.part(0, column, parts.rows, 1)])),
    );
  }),
  inContext('MAKEARRAY', 'nnr', (context, rows, columns, lambda) => {
    const of = lambdaOf(lambda);
    const [height, width] = [Math.trunc(rows), Math.trunc(columns)];
    if (height < 1 || width < 1) raise('#VALUE!');
    return ArrayValue.build(height, width, (row, column) =>
      scalarOf(context, of.call([row + 1, column + 1])),
    );
  }),
  inContext('REDUCE', 'rrr', (context, start, value, lambda) => {
    const parts = new Parts(context, value);
    const of = lambdaOf(lambda);
    let total: Value = start;
    for (let row = 0; row < parts.rows; row++) {
      for (let column = 0; column < parts.columns; column++) {
        total = of.call([total, parts.cell(row, column)]);
      }
    }
    return total;
  }),
  inContext('SCAN', 'rrr', (context, start, value, lambda) => {
    const parts = new Parts(context, value);
    const of = lambdaOf(lambda);
    let total: Value = start;
    return ArrayValue.build(parts.rows, parts.columns, (row, column) => {
      total = of.call([total, parts.cell(row, column)]);
      return scalarOf(context, total);
    });
  }),
];
