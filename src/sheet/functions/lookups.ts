import { CellError } from '../../cells/value';
import { columnLetters, MAX_COLUMNS, MAX_ROWS } from '../../cells/address';
import { toNumber } from '../coerce';
import { compare, compareTexts } from '../compare';
import { ArrayValue, ERRORS, Keep, raise, Reference, type Scalar, type Value } from '../values';
import { type Context, inContext, plain } from './spec';
import { hasWildcards, wildcard } from './wildcards';

type Wanted = Exclude<Scalar, CellError | null>;

/** A row or a column of cells to look along. */
interface Line {
  readonly length: number;
  at(index: number): Scalar;
  /** Kept with the cells it was made of. */
  readonly index: () => ReadonlyMap<unknown, number>;
}

function lineOf(context: Context, value: Value, array: ArrayValue, column?: number, row?: number): Line {
  const isColumn = column !== undefined || (row === undefined && array.columns === 1);
  if (!isColumn && row === undefined && array.rows !== 1) return raise('#N/A');
  const fixed = column ?? row ?? 0;
  const line = {
    length: isColumn ? array.rows : array.columns,
    at: isColumn ? (i: number) => array.at(i, fixed) : (i: number) => array.at(fixed, i),
  };
  const make = () => indexOf(line, isColumn ? array.storedRows : array.columns);
  const index = () =>
    value instanceof Reference ? context.memo(value, `line ${isColumn ? 'c' : 'r'}${fixed}`, make) : make();
  return { ...line, index };
}

/** Where each value stands first; texts without regard to case. */
function indexOf(line: Omit<Line, 'index'>, stored: number): ReadonlyMap<unknown, number> {
  const index = new Map<unknown, number>();
  for (let i = 0; i < stored; i++) {
    const key = keyOf(line.at(i));
    if (key !== null && !index.has(key)) index.set(key, i);
  }
  return index;
}
const keyOf = (value: Scalar): unknown =>
  typeof value === 'string'
    ? `t${value.toLowerCase()}`
    : value instanceof CellError
      ? null
      : value === 0
        ? 0
        : value;

const SHORT = 16;

function firstExact(wanted: Wanted, line: Line): number {
  // An index of a few cells costs more than it saves.
  if (line.length > SHORT) return line.index().get(keyOf(wanted)) ?? -1;
  for (let i = 0; i < line.length; i++) if (isSame(line.at(i), wanted)) return i;
  return -1;
}

const isSame = (value: Scalar, wanted: Scalar): boolean =>
  value === wanted ||
  (typeof value === 'string' && typeof wanted === 'string' && compareTexts(value, wanted) === 0);

function firstLike(pattern: string, line: Line): number {
  const form = wildcard(pattern);
  for (let i = 0; i < line.length; i++) {
    const value = line.at(i);
    if (typeof value === 'string' && form.matches(value)) return i;
  }
  return -1;
}

/** Exact, with wildcards in text. */
const find = (wanted: Wanted, line: Line): number =>
  typeof wanted === 'string' && hasWildcards(wanted) ? firstLike(wanted, line) : firstExact(wanted, line);

/** The order of values of one kind; undefined for those of different kinds, which look-ups pass by. */
const order = (value: Scalar, wanted: Wanted): number | undefined =>
  typeof value === typeof wanted ? compare(value, wanted) : undefined;

/**
 * The last value not above the one wanted, by halving: also in a line that is not sorted this gives what spreadsheets
 * give. Values of other kinds are passed by; where the value itself is met, the last of its run is taken.
 */
function halving(wanted: Wanted, line: Line): number {
  let low = 0;
  let high = line.length - 1;
  let best = -1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    let at = middle;
    let found = order(line.at(at), wanted);
    while (found === undefined && at < high) found = order(line.at(++at), wanted);
    if (found === 0) return lastOfRun(wanted, line, at);
    if (found !== undefined && found < 0) {
      best = at;
      low = at + 1;
    } else high = middle - 1;
  }
  return best;
}

function lastOfRun(wanted: Wanted, line: Line, at: number): number {
  let last = at;
  while (last + 1 < line.length && order(line.at(last + 1), wanted) === 0) last++;
  return last;
}

/** The last value, one after the other, before a falling line falls below the wanted; the first that is equal. */
function lastNotBelow(wanted: Wanted, line: Line): number {
  let best = -1;
  for (let i = 0; i < line.length; i++) {
    const found = order(line.at(i), wanted);
    if (found === undefined) continue;
    if (found === 0) return i;
    if (found < 0) break;
    best = i;
  }
  return best;
}

function match(wanted: Wanted, line: Line, type: number): number {
  if (type === 0) return find(wanted, line);
  return type > 0 ? halving(wanted, line) : lastNotBelow(wanted, line);
}

/** The look-ups of old read a blank cell as 0. */
const present = (value: Exclude<Scalar, CellError>): Wanted => value ?? 0;

interface Search {
  /** 0 exact, −1 or the next below, 1 or the next above, 2 with wildcards. */
  readonly mode: number;
  /** 1 from the first, −1 from the last, 2 and −2 by halving a rising or falling line. */
  readonly direction: number;
}

function searchOf(context: Context, mode: Value | undefined, direction: Value | undefined): Search {
  const option = (value: Value | undefined, otherwise: number): number => {
    if (value === undefined) return otherwise;
    const cells = context.array(value);
    if (cells.size > 1) throw new Keep('a look-up with several ways to look at once is not calculated here');
    return toNumber(cells.at(0, 0), context.date1904);
  };
  return { mode: option(mode, 0), direction: option(direction, 1) };
}

function searched(wanted: Exclude<Scalar, CellError>, line: Line, { mode, direction }: Search): number {
  if (![0, -1, 1, 2, 3].includes(mode) || ![1, -1, 2, -2].includes(direction)) return raise('#VALUE!');
  if (mode === 3) throw new Keep('a look-up by regular expression is not calculated here');
  if (direction === 2 || direction === -2) {
    return mode === 2 ? raise('#VALUE!') : sidewards(wanted, line, mode, direction < 0);
  }
  if (wanted !== null && direction === 1 && mode === 0) return firstExact(wanted, line);
  if (wanted !== null && direction === 1 && mode === 2) return find(wanted, line);
  const form =
    mode === 2 && typeof wanted === 'string' && hasWildcards(wanted) ? wildcard(wanted) : undefined;
  let best = -1;
  for (let step = 0; step < line.length; step++) {
    const i = direction === 1 ? step : line.length - 1 - step;
    const value = line.at(i);
    if (form !== undefined ? typeof value === 'string' && form.matches(value) : isSame(value, wanted))
      return i;
    if ((mode !== -1 && mode !== 1) || value instanceof CellError) continue;
    if (overall(value, wanted) * mode < 0) continue;
    if (best < 0 || overall(value, line.at(best)) * mode < 0) best = i;
  }
  return best;
}

/** Numbers before text before truth values before blanks. */
function overall(a: Scalar, b: Scalar): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null);
  return compare(a, b);
}

/** By halving a line that rises or falls: the value itself, or its neighbour on the side that the mode allows. */
function sidewards(wanted: Exclude<Scalar, CellError>, line: Line, mode: number, falls: boolean): number {
  let low = 0;
  let high = line.length - 1;
  while (low <= high) {
    const middle = (low + high) >> 1;
    const found = overall(line.at(middle), wanted);
    if (found === 0) return firstOfSame(line, middle);
    if (falls ? found > 0 : found < 0) low = middle + 1;
    else high = middle - 1;
  }
  const neighbor = mode < 0 !== falls ? high : low;
  return (mode === -1 || mode === 1) && neighbor < line.length ? neighbor : -1;
}

function firstOfSame(line: Line, at: number): number {
  let first = at;
  while (first > 0 && isSame(line.at(first - 1), line.at(at))) first--;
  return first;
}

const indexOrError = (index: number): Value => (index < 0 ? ERRORS['#N/A'] : index + 1);

/** A row or column of the table, as a reference where the table is one. */
function part(context: Context, from: Value, isRow: boolean, index: number): Value {
  if (from instanceof Reference) {
    const area = from.areas[0] ?? raise('#REF!');
    return new Reference([
      isRow
        ? { ...area, top: area.top + index, bottom: area.top + index }
        : { ...area, left: area.left + index, right: area.left + index },
    ]);
  }
  const array = context.array(from);
  if ((isRow ? array.columns : array.rows) === 1) return isRow ? array.at(index, 0) : array.at(0, index);
  return isRow
    ? ArrayValue.build(1, array.columns, (_, column) => array.at(index, column))
    : ArrayValue.build(array.rows, 1, (row) => array.at(row, index));
}

const inTable = (name: string, isVertical: boolean) =>
  inContext(name, 'sAnb?', (context, value, table, index, isSorted = true): Value => {
    if (!(table instanceof Reference || table instanceof ArrayValue)) return raise('#VALUE!');
    const cells = context.array(table);
    const place = Math.trunc(index) - 1;
    if (place < 0) return raise('#VALUE!');
    if (place >= (isVertical ? cells.columns : cells.rows)) return raise('#REF!');
    const line = isVertical ? lineOf(context, table, cells, 0) : lineOf(context, table, cells, undefined, 0);
    const found = match(present(value), line, isSorted ? 1 : 0);
    if (found < 0) return ERRORS['#N/A'];
    return isVertical ? cells.at(found, place) : cells.at(place, found);
  });

/** The longer side of an array is looked along, its last row or column answers. */
function lookup(context: Context, wanted: Wanted, from: Value, results: Value | undefined): Value {
  const cells = context.array(from);
  const isAcross = cells.columns > cells.rows;
  const line = isAcross ? lineOf(context, from, cells, undefined, 0) : lineOf(context, from, cells, 0);
  const found = match(wanted, line, 1);
  if (found < 0) return ERRORS['#N/A'];
  if (results === undefined) {
    return isAcross ? cells.at(cells.rows - 1, found) : cells.at(found, cells.columns - 1);
  }
  const answers = context.array(results);
  if (answers.columns !== 1 && answers.rows !== 1) return raise('#N/A');
  return answers.columns === 1 ? answers.at(found, 0) : answers.at(0, found);
}

function address(
  row: number,
  column: number,
  fixing: number | undefined,
  isA1: boolean,
  sheet: string | undefined,
): string {
  const [r, c, kind] = [Math.trunc(row), Math.trunc(column), Math.trunc(fixing ?? 1)];
  if (kind < 1 || kind > 4) return raise('#VALUE!');
  const [fixedRow, fixedColumn] = [kind <= 2, kind === 1 || kind === 3];
  const text = isA1
    ? r < 1 || c < 1 || r > MAX_ROWS || c > MAX_COLUMNS
      ? raise('#VALUE!')
      : `${fixedColumn ? '$' : ''}${columnLetters(c - 1)}${fixedRow ? '$' : ''}${r}`
    : `R${fixedRow ? r : r === 0 ? '' : `[${r}]`}C${fixedColumn ? c : c === 0 ? '' : `[${c}]`}`;
  return sheet === undefined ? text : `${quoted(sheet)}!${text}`;
}

/** A sheet's name as formulas write it. */
function quoted(sheet: string): string {
  const isPlain = /^[\p{L}_][\p{L}\d_.]*$/u.test(sheet) && !/^[A-Z]{1,3}\d+$/i.test(sheet);
  return isPlain || sheet === '' ? sheet : `'${sheet.replaceAll("'", "''")}'`;
}

export const lookups = [
  inContext('MATCH', 'sAn?', (context, value, from, type = 1) =>
    indexOrError(match(present(value), lineOf(context, from, context.array(from)), type)),
  ),
  inContext('XMATCH', 'sAr?r?', (context, value, from, mode, direction) =>
    indexOrError(
      searched(value, lineOf(context, from, context.array(from)), searchOf(context, mode, direction)),
    ),
  ),
  inTable('VLOOKUP', true),
  inTable('HLOOKUP', false),
  inContext('LOOKUP', 'sAA?', (context, value, from, results) =>
    lookup(context, present(value), from, results),
  ),
  inContext('XLOOKUP', 'sAAr?r?r?', (context, value, from, results, otherwise, mode, direction): Value => {
    const cells = context.array(from);
    const line = lineOf(context, from, cells);
    const answers = context.array(results);
    const isColumn = cells.columns === 1 && (cells.rows > 1 || answers.rows === 1);
    if ((isColumn ? answers.rows : answers.columns) !== line.length) return raise('#VALUE!');
    const found = searched(value, line, searchOf(context, mode, direction));
    if (found >= 0) return part(context, results, isColumn, found);
    return otherwise === undefined || otherwise === null ? ERRORS['#N/A'] : otherwise;
  }),
  plain('ADDRESS', 'nnn?b?t?', (row, column, fixing, isA1 = true, sheet) =>
    address(row, column, fixing, isA1, sheet),
  ),
  plain('HYPERLINK', 'vv?', (link, label) => label ?? link),
];
