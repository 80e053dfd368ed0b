/** Arrays from arrays: filtered, sorted, cut, put together. */
import { CellError } from '../../cells/value';
import { toLogical, toNumber } from '../coerce';
import { compare } from '../compare';
import { ArrayValue, boundedSize, ERRORS, raise, type Scalar, type Value } from '../values';
import { inContext, plain } from './spec';

const part = (array: ArrayValue, rows: readonly number[], columns: readonly number[]): ArrayValue =>
  rows.length === 0 || columns.length === 0
    ? raise('#CALC!')
    : ArrayValue.build(rows.length, columns.length, (r, c) =>
        array.at(rows[r] as number, columns[c] as number),
      );

const all = (count: number): number[] => Array.from({ length: count }, (_, i) => i);
const rowsOf = (array: ArrayValue): number[] => all(boundedSize(array.rows, 1));
const columnsOf = (array: ArrayValue): number[] => all(array.columns);

function filter(array: ArrayValue, include: ArrayValue, otherwise: Value | undefined): Value {
  const byRow = include.columns === 1 && include.rows === array.rows;
  if (!byRow && !(include.rows === 1 && include.columns === array.columns)) return raise('#VALUE!');
  const kept = include.dense().flatMap((value, i) => (toLogical(value) ? [i] : []));
  if (kept.length === 0) return otherwise ?? raise('#CALC!');
  return byRow ? part(array, kept, columnsOf(array)) : part(array, rowsOf(array), kept);
}

/** Numbers, text, truth values, errors; blanks always last. */
function sortRank(value: Scalar): number {
  if (value === null) return 4;
  if (value instanceof CellError) return 3;
  return typeof value === 'number' ? 0 : typeof value === 'string' ? 1 : 2;
}
function sortOrder(a: Scalar, b: Scalar, sign: number): number {
  const [x, y] = [sortRank(a), sortRank(b)];
  if (x === 4 || y === 4) return x - y;
  if (x !== y) return sign * (x - y);
  return x === 3 ? 0 : sign * compare(a, b);
}
const signOf = (value: Scalar): number => (value === 1 || value === -1 ? value : raise('#VALUE!'));

interface Key {
  readonly at: (index: number) => Scalar;
  readonly sign: number;
}
const sorted = (count: number, keys: readonly Key[]): number[] =>
  all(count).sort((a, b) => {
    for (const { at, sign } of keys) {
      const found = sortOrder(at(a), at(b), sign);
      if (found !== 0) return found;
    }
    return a - b;
  });

function sort(
  array: ArrayValue,
  by: ArrayValue | undefined,
  orders: ArrayValue | undefined,
  byColumn: boolean,
): Value {
  const width = byColumn ? array.rows : array.columns;
  const signs = (orders?.dense() ?? [1]).map(signOf);
  const keys = (by?.dense() ?? [1]).map((value, i): Key => {
    const index = typeof value === 'number' ? Math.trunc(value) - 1 : raise('#VALUE!');
    if (index < 0 || index >= width) return raise('#VALUE!');
    return {
      at: byColumn ? (at) => array.at(index, at) : (at) => array.at(at, index),
      sign: signs[i] ?? signs[signs.length - 1] ?? 1,
    };
  });
  return byColumn
    ? part(array, rowsOf(array), sorted(array.columns, keys))
    : part(array, sorted(array.rows, keys), columnsOf(array));
}

function sortBy(array: ArrayValue, args: readonly (ArrayValue | number | null)[]): Value {
  const keys: Key[] = [];
  let isByColumn: boolean | undefined;
  for (const arg of args) {
    if (arg instanceof ArrayValue && arg.size > 1) {
      const across = arg.rows === 1;
      if (arg.rows !== 1 && arg.columns !== 1) return raise('#VALUE!');
      if (across ? arg.columns !== array.columns : arg.rows !== array.rows) return raise('#VALUE!');
      if (isByColumn !== undefined && isByColumn !== across) return raise('#VALUE!');
      isByColumn = across;
      keys.push({ at: across ? (i) => arg.at(0, i) : (i) => arg.at(i, 0), sign: 1 });
    } else {
      const last = keys.pop() ?? raise('#VALUE!');
      const sign = arg instanceof ArrayValue ? arg.at(0, 0) : arg;
      keys.push({ ...last, sign: sign === null ? 1 : signOf(sign) });
    }
  }
  if (keys.length === 0) return array;
  return isByColumn === true
    ? part(array, rowsOf(array), sorted(array.columns, keys))
    : part(array, sorted(array.rows, keys), columnsOf(array));
}

/** What rows that are the same share. */
const sameKey = (values: readonly Scalar[]): string =>
  values
    .map((value) =>
      value instanceof CellError
        ? `e${value.code}`
        : typeof value === 'string'
          ? `s${value.toLowerCase()}`
          : `${typeof value}${value}`,
    )
    .join('\u0000');

function unique(array: ArrayValue, byColumn: boolean, onlyOnce: boolean): Value {
  const lines = byColumn ? columnsOf(array) : rowsOf(array);
  const across = byColumn ? rowsOf(array) : columnsOf(array);
  const seen = new Map<string, { line: number; count: number }>();
  for (const line of lines) {
    const key = sameKey(across.map((i) => (byColumn ? array.at(i, line) : array.at(line, i))));
    const found = seen.get(key);
    if (found === undefined) seen.set(key, { line, count: 1 });
    else found.count++;
  }
  const kept = [...seen.values()].filter(({ count }) => !onlyOnce || count === 1).map(({ line }) => line);
  return byColumn ? part(array, across, kept) : part(array, kept, across);
}

/** The first (last, below zero) of a count of lines; all where none is asked for. */
function taken(count: number, wanted: number | null | undefined): number[] {
  if (wanted === undefined || wanted === null) return all(count);
  const n = Math.trunc(wanted);
  if (n === 0) return raise('#CALC!');
  return n > 0 ? all(Math.min(n, count)) : all(count).slice(Math.max(0, count + n));
}
function dropped(count: number, wanted: number | null | undefined): number[] {
  const n = Math.trunc(wanted ?? 0);
  return n >= 0 ? all(count).slice(n) : all(Math.max(0, count + n));
}

function chosen(count: number, indexes: readonly Scalar[]): number[] {
  return indexes.map((value) => {
    const index = Math.trunc(toNumber(value));
    if (index === 0 || Math.abs(index) > count) return raise('#VALUE!');
    return index > 0 ? index - 1 : count + index;
  });
}

function stack(arrays: readonly ArrayValue[], isDown: boolean): ArrayValue {
  const side = (array: ArrayValue) => (isDown ? array.rows : array.columns);
  const other = (array: ArrayValue) => (isDown ? array.columns : array.rows);
  const width = Math.max(...arrays.map(other));
  boundedSize(
    arrays.reduce((sum, array) => sum + side(array), 0),
    width,
  );
  const places = arrays.flatMap((array) => all(side(array)).map((index) => ({ array, index })));
  const at = (line: number, across: number): Scalar => {
    const { array, index } = places[line] as { array: ArrayValue; index: number };
    if (across >= other(array)) return ERRORS['#N/A'];
    return isDown ? array.at(index, across) : array.at(across, index);
  };
  return isDown
    ? ArrayValue.build(places.length, width, at)
    : ArrayValue.build(width, places.length, (row, column) => at(column, row));
}

/** All cells in one line; without blanks (1, 3), without errors (2, 3). */
function inLine(array: ArrayValue, ignored: number, byColumn: boolean): Scalar[] {
  const mode = Math.trunc(ignored);
  if (mode < 0 || mode > 3) return raise('#VALUE!');
  const cells = byColumn
    ? columnsOf(array).flatMap((c) => rowsOf(array).map((r) => array.at(r, c)))
    : array.dense();
  const kept = cells.filter(
    (value) => !((mode & 1) !== 0 && value === null) && !((mode & 2) !== 0 && value instanceof CellError),
  );
  return kept.length === 0 ? raise('#CALC!') : kept;
}

function wrap(array: ArrayValue, count: number, pad: Scalar, isRows: boolean): ArrayValue {
  if (array.rows !== 1 && array.columns !== 1) return raise('#VALUE!');
  const length = Math.trunc(count);
  if (length < 1) return raise('#NUM!');
  const cells = array.dense();
  const lines = Math.ceil(cells.length / length);
  const width = Math.min(length, Math.max(cells.length, length));
  return isRows
    ? ArrayValue.build(lines, width, (r, c) =>
        r * length + c < cells.length ? (cells[r * length + c] ?? null) : pad,
      )
    : ArrayValue.build(width, lines, (r, c) =>
        c * length + r < cells.length ? (cells[c * length + r] ?? null) : pad,
      );
}

const padding = (pad: Scalar | undefined): Scalar => (pad === undefined ? ERRORS['#N/A'] : pad);

function expanded(
  array: ArrayValue,
  rows: number | null | undefined,
  columns: number | null | undefined,
  pad: Scalar,
) {
  const height = Math.trunc(rows ?? array.rows);
  const width = Math.trunc(columns ?? array.columns);
  if (height < array.rows || width < array.columns) return raise('#VALUE!');
  return ArrayValue.build(height, width, (r, c) =>
    r < array.rows && c < array.columns ? array.at(r, c) : pad,
  );
}

/** A count of lines that may be left empty. */
const optional = (value: Exclude<Scalar, CellError> | undefined): number | null =>
  value === undefined || value === null ? null : typeof value === 'number' ? value : Number(value);

export const arrays = [
  plain('TRANSPOSE', 'a', (array) => ArrayValue.build(array.columns, array.rows, (r, c) => array.at(c, r))),
  inContext('FILTER', 'aar?', (_, array, include, otherwise) => filter(array, include, otherwise)),
  plain('SORT', 'aa?a?b?', (array, by, orders, byColumn = false) =>
    sort(array, given(by), given(orders), byColumn),
  ),
  plain('SORTBY', 'a(a)+', sortByArguments),
  plain('UNIQUE', 'ab?b?', (array, byColumn = false, onlyOnce = false) => unique(array, byColumn, onlyOnce)),
  plain('SEQUENCE', 'nn?n?n?', (rows, columns, start, step) => {
    const [height, width] = [Math.trunc(rows), Math.trunc(columns ?? 1)];
    if (height < 0 || width < 0) return raise('#VALUE!');
    if (height === 0 || width === 0) return raise('#CALC!');
    return ArrayValue.build(height, width, (r, c) => (start ?? 1) + (r * width + c) * (step ?? 1));
  }),
  plain('TAKE', 'as?s?', (array, rows, columns) =>
    part(array, taken(array.rows, optional(rows)), taken(array.columns, optional(columns))),
  ),
  plain('DROP', 'as?s?', (array, rows, columns) =>
    part(array, dropped(array.rows, optional(rows)), dropped(array.columns, optional(columns))),
  ),
  plain('EXPAND', 'as?s?v?', (array, rows, columns, pad) =>
    expanded(array, optional(rows), optional(columns), padding(pad)),
  ),
  plain('CHOOSEROWS', 'a(a)+', (array, ...wanted) =>
    part(
      array,
      chosen(
        array.rows,
        wanted.flatMap((one) => one.dense()),
      ),
      columnsOf(array),
    ),
  ),
  plain('CHOOSECOLS', 'a(a)+', (array, ...wanted) =>
    part(
      array,
      rowsOf(array),
      chosen(
        array.columns,
        wanted.flatMap((one) => one.dense()),
      ),
    ),
  ),
  plain('VSTACK', '(a)+', (...all) => stack(all, true)),
  plain('HSTACK', '(a)+', (...all) => stack(all, false)),
  plain('TOCOL', 'an?b?', (array, ignored = 0, byColumn = false) => {
    const cells = inLine(array, ignored, byColumn);
    return new ArrayValue(cells.length, 1, cells);
  }),
  plain('TOROW', 'an?b?', (array, ignored = 0, byColumn = false) => {
    const cells = inLine(array, ignored, byColumn);
    return new ArrayValue(1, cells.length, cells);
  }),
  plain('WRAPROWS', 'anv?', (array, count, pad) => wrap(array, count, padding(pad), true)),
  plain('WRAPCOLS', 'anv?', (array, count, pad) => wrap(array, count, padding(pad), false)),
];

function sortByArguments(array: ArrayValue, ...args: ArrayValue[]): Value {
  return sortBy(array, args);
}

/** An argument left empty between commas arrives as one blank. */
function given(array: ArrayValue | undefined): ArrayValue | undefined {
  return array?.size === 1 && array.at(0, 0) === null ? undefined : array;
}
