/** Matrices, and lines of least squares through several variables. */
import { toLogical } from '../coerce';
import { ArrayValue, boundedSize, ERRORS, raise, type Scalar } from '../values';
import { CellError } from '../../cells/value';
import { type Context, inContext, plain } from './spec';

type Matrix = number[][];

function matrixOf(array: ArrayValue): Matrix {
  const cells = array.dense();
  return Array.from({ length: array.rows }, (_, row) =>
    cells.slice(row * array.columns, (row + 1) * array.columns).map(numberOf),
  );
}
function numberOf(value: Scalar): number {
  if (value instanceof CellError) return raise(value);
  return typeof value === 'number' ? value : raise('#VALUE!');
}
/** What is to be fitted must be numbers; an error among them is no more than another thing that is none. */
const fittedOf = (array: ArrayValue): Matrix =>
  array.dense().every((value) => typeof value === 'number') ? matrixOf(array) : raise('#VALUE!');
const squareOf = (array: ArrayValue): Matrix =>
  array.rows === array.columns ? matrixOf(array) : raise('#VALUE!');

const cell = (matrix: Matrix, row: number, column: number): number => matrix[row]?.[column] ?? 0;

/** Elimination with the largest pivot of each column: the sign and product of the pivots, and what was done to `beside`. */
function eliminated(matrix: Matrix, beside: Matrix, context: Context): number {
  const n = matrix.length;
  let determinant = 1;
  for (let column = 0; column < n; column++) {
    context.tick(n * (n + (beside[0]?.length ?? 0)));
    let pivot = column;
    for (let row = column + 1; row < n; row++) {
      if (Math.abs(cell(matrix, row, column)) > Math.abs(cell(matrix, pivot, column))) pivot = row;
    }
    if (cell(matrix, pivot, column) === 0) return 0;
    if (pivot !== column) {
      swap(matrix, pivot, column);
      swap(beside, pivot, column);
      determinant = -determinant;
    }
    determinant *= cell(matrix, column, column);
    for (let row = 0; row < n; row++) {
      if (row === column) continue;
      const factor = cell(matrix, row, column) / cell(matrix, column, column);
      if (factor === 0) continue;
      subtract(matrix, row, column, factor);
      subtract(beside, row, column, factor);
    }
  }
  return determinant;
}

function swap(matrix: Matrix, a: number, b: number): void {
  const row = matrix[a];
  if (row === undefined) return;
  matrix[a] = matrix[b] as number[];
  matrix[b] = row;
}
function subtract(matrix: Matrix, row: number, from: number, factor: number): void {
  const target = matrix[row];
  const source = matrix[from];
  if (target === undefined || source === undefined) return;
  for (let i = 0; i < target.length; i++) target[i] = (target[i] as number) - factor * (source[i] as number);
}

function inverse(array: ArrayValue, context: Context): ArrayValue {
  const matrix = squareOf(array);
  const n = matrix.length;
  const result = unit(n);
  if (eliminated(matrix, result, context) === 0) return raise('#NUM!');
  return ArrayValue.build(n, n, (row, column) => cell(result, row, column) / cell(matrix, row, row));
}

const unit = (n: number): Matrix =>
  Array.from({ length: n }, (_, row) => Array.from({ length: n }, (__, column) => (row === column ? 1 : 0)));

function product(a: ArrayValue, b: ArrayValue, context: Context): ArrayValue {
  if (a.columns !== b.rows) return raise('#VALUE!');
  const [left, right] = [matrixOf(a), matrixOf(b)];
  return ArrayValue.build(a.rows, b.columns, (row, column) => {
    context.tick(a.columns);
    let sum = 0;
    for (let i = 0; i < a.columns; i++) sum += cell(left, row, i) * cell(right, i, column);
    return sum;
  });
}

interface Fit {
  readonly slopes: readonly number[];
  readonly intercept: number;
  readonly slopeErrors: readonly number[];
  readonly interceptError: number;
  readonly freedom: number;
  /** Sums of squares of what the line explains, and of what it leaves. */
  readonly explained: number;
  readonly left: number;
}

/** Smaller than this against its own length, what a column adds to the ones before it is rounding. */
const COLLINEAR = 1e-9;

/** Columns made orthogonal one after the other; one that adds nothing to those before it gets the slope 0. */
function fit(ys: readonly number[], columns: readonly (readonly number[])[], hasIntercept: boolean): Fit {
  const n = ys.length;
  const meanOf = (values: readonly number[]) =>
    hasIntercept ? values.reduce((sum, value) => sum + value, 0) / n : 0;
  const meanY = meanOf(ys);
  const means = columns.map(meanOf);
  const base: number[][] = [];
  const used: number[] = [];
  const factors: number[][] = [];
  columns.forEach((column, index) => {
    const rest = column.map((value) => value - (means[index] as number));
    const length = Math.hypot(...rest);
    const row = base.map((direction) => {
      const along = dot(direction, rest);
      rest.forEach((value, i) => (rest[i] = value - along * (direction[i] as number)));
      return along;
    });
    const left = Math.hypot(...rest);
    if (left <= COLLINEAR * length) return;
    base.push(rest.map((value) => value / left));
    used.push(index);
    factors.push([...row, left]);
  });
  const rest = ys.map((value) => value - meanY);
  const total = dot(rest, rest);
  const along = base.map((direction) => {
    const value = dot(direction, rest);
    rest.forEach((one, i) => (rest[i] = one - value * (direction[i] as number)));
    return value;
  });
  const left = dot(rest, rest);
  const back = backward(factors, along);
  const slopes = columns.map((_, index) => back[used.indexOf(index)] ?? 0);
  const freedom = n - used.length - (hasIntercept ? 1 : 0);
  const spread = freedom > 0 ? left / freedom : 0;
  const inverseFactors = base.map((_, k) =>
    backward(
      factors,
      base.map((__, i) => (i === k ? 1 : 0)),
    ),
  );
  const covariance = (a: number, b: number): number =>
    inverseFactors.reduce((sum, column) => sum + (column[a] ?? 0) * (column[b] ?? 0), 0);
  const usedMeans = used.map((index) => means[index] as number);
  const interceptSpread = usedMeans.reduce(
    (sum, a, i) => sum + usedMeans.reduce((inner, b, j) => inner + a * b * covariance(i, j), 0),
    1 / n,
  );
  return {
    slopes,
    intercept: hasIntercept
      ? meanY - slopes.reduce((sum, slope, i) => sum + slope * (means[i] as number), 0)
      : 0,
    slopeErrors: columns.map((_, index) => {
      const i = used.indexOf(index);
      return i < 0 ? 0 : Math.sqrt(spread * covariance(i, i));
    }),
    interceptError: Math.sqrt(spread * interceptSpread),
    freedom,
    explained: Math.max(0, total - left),
    left,
  };
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, i) => sum + value * (b[i] as number), 0);

/** Solves R x = y, where `factors[k]` is the kth column of R down to its diagonal. */
function backward(factors: readonly (readonly number[])[], y: readonly number[]): number[] {
  const x = [...y];
  for (let k = factors.length - 1; k >= 0; k--) {
    const column = factors[k] as readonly number[];
    x[k] = (x[k] as number) / (column[k] as number);
    for (let i = 0; i < k; i++) x[i] = (x[i] as number) - (column[i] as number) * (x[k] as number);
  }
  return x;
}

interface Data {
  readonly ys: number[];
  /** One column of numbers a variable. */
  readonly columns: number[][];
  readonly isAcross: boolean;
}

const given = (array: ArrayValue | undefined): ArrayValue | undefined =>
  array?.size === 1 && array.at(0, 0) === null ? undefined : array;

function dataOf(known: ArrayValue, against: ArrayValue | undefined): Data {
  const ys = fittedOf(known).flat();
  const isAcross = known.rows === 1 && known.columns > 1;
  if (against === undefined) return { ys, columns: [ys.map((_, i) => i + 1)], isAcross };
  const xs = fittedOf(against);
  if (against.rows === known.rows && against.columns === known.columns)
    return { ys, columns: [xs.flat()], isAcross };
  return { ys, columns: variables(xs, isAcross, ys.length), isAcross };
}

/** Each variable's numbers: columns where the data run down, rows where they run across. */
function variables(xs: Matrix, isAcross: boolean, count: number): number[][] {
  const all = isAcross ? xs : (xs[0] ?? []).map((_, column) => xs.map((row) => row[column] as number));
  return all.every((one) => one.length === count) ? all : raise('#REF!');
}

function fitTable(
  found: Fit,
  isExponential: boolean,
  hasStatistics: boolean,
  hasIntercept: boolean,
): ArrayValue {
  const coefficient = (value: number) => (isExponential ? Math.exp(value) : value);
  const first = [...found.slopes].reverse().map(coefficient).concat(coefficient(found.intercept));
  if (!hasStatistics) return ArrayValue.of([first]);
  const { explained, left, freedom } = found;
  const none = ERRORS['#N/A'];
  const pad = (values: readonly Scalar[]): Scalar[] => first.map((_, i) => values[i] ?? none);
  const used = found.slopeErrors.length;
  return ArrayValue.of([
    first,
    [...[...found.slopeErrors].reverse(), hasIntercept ? found.interceptError : none],
    pad([explained / (explained + left), freedom > 0 ? Math.sqrt(left / freedom) : 0]),
    pad([freedom > 0 && left > 0 ? explained / used / (left / freedom) : ERRORS['#NUM!'], freedom]),
    pad([explained, left]),
  ]);
}

const logged = (data: Data): Data => ({
  ...data,
  ys: data.ys.map((y) => (y > 0 ? Math.log(y) : raise('#NUM!'))),
});

const fitting = (name: string, isExponential: boolean) =>
  plain(name, 'aa?s?b?', (known, against, intercept, hasStatistics = false) => {
    const hasIntercept = isWanted(intercept);
    const data = dataOf(known, given(against));
    const { ys, columns } = isExponential ? logged(data) : data;
    return fitTable(fit(ys, columns, hasIntercept), isExponential, hasStatistics, hasIntercept);
  });

/** Left out or left empty, the line has an intercept. */
const isWanted = (value: Exclude<Scalar, CellError> | undefined): boolean =>
  value === undefined || value === null || toLogical(value);

/** Values of the fitted line at new places. */
const along = (name: string, isExponential: boolean) =>
  plain(name, 'aa?a?s?', (known, against, at, wanted) => {
    const hasIntercept = isWanted(wanted);
    const data = dataOf(known, given(against));
    const { ys, columns, isAcross } = isExponential ? logged(data) : data;
    const { slopes, intercept } = fit(ys, columns, hasIntercept);
    const places = given(at) ?? given(against);
    const value = (xs: readonly number[]): number => {
      const found = xs.reduce((sum, x, i) => sum + x * (slopes[i] ?? 0), intercept);
      return isExponential ? Math.exp(found) : found;
    };
    if (places === undefined)
      return ArrayValue.build(known.rows, known.columns, (r, c) => value([r + c + 1]));
    const xs = matrixOf(places);
    if (columns.length === 1)
      return ArrayValue.build(places.rows, places.columns, (r, c) => value([cell(xs, r, c)]));
    if ((isAcross ? places.rows : places.columns) !== columns.length) return raise('#REF!');
    return isAcross
      ? ArrayValue.build(1, places.columns, (_, c) => value(xs.map((row) => row[c] as number)))
      : ArrayValue.build(places.rows, 1, (r) => value(xs[r] ?? []));
  });

export const matrices = [
  inContext('MMULT', 'aa', (context, a, b) => product(a, b, context)),
  inContext('MDETERM', 'a', (context, array) => eliminated(squareOf(array), [], context)),
  inContext('MINVERSE', 'a', (context, array) => inverse(array, context)),
  plain('MUNIT', 'n', (size) => {
    const n = Math.trunc(size);
    if (n < 1) return raise('#VALUE!');
    boundedSize(n, n);
    return ArrayValue.build(n, n, (row, column) => (row === column ? 1 : 0));
  }),
  fitting('LINEST', false),
  fitting('LOGEST', true),
  along('TREND', false),
  along('GROWTH', true),
];
