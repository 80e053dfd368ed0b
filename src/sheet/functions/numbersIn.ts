import { CellError } from '../../cells/value';
import { toNumber } from '../coerce';
import { ArrayValue, raise, Reference, type Scalar, type Value } from '../values';
import type { Context } from './spec';

/**
 * The numbers of arguments as SUM sees them: what is typed itself is read as a number; of cells and arrays only
 * numbers count, text, truth values and blanks do not. Errors are raised.
 */
export function eachNumber(context: Context, args: readonly Value[], visit: (value: number) => void): void {
  for (const arg of args) {
    if (arg instanceof Reference || arg instanceof ArrayValue) {
      context.each(arg, (value) => {
        if (typeof value === 'number') visit(value);
        else if (value instanceof CellError) raise(value);
      });
    } else visit(toNumber(scalarOf(arg), context.date1904));
  }
}

export function numbersIn(context: Context, args: readonly Value[]): number[] {
  const numbers: number[] = [];
  eachNumber(context, args, (value) => numbers.push(value));
  return numbers;
}

/** As AVERAGEA and its kin see them: in cells and arrays text counts as 0, truth values as 1 and 0. */
export function allNumbersIn(context: Context, args: readonly Value[]): number[] {
  const numbers: number[] = [];
  const take = (value: Scalar): void => {
    if (typeof value === 'number') numbers.push(value);
    else if (value instanceof CellError) raise(value);
    else if (value !== null) numbers.push(value === true ? 1 : 0);
  };
  for (const arg of args) {
    if (arg instanceof Reference || arg instanceof ArrayValue) context.each(arg, take);
    else numbers.push(toNumber(scalarOf(arg), context.date1904));
  }
  return numbers;
}

/** Pairs of two arrays of one size, those left out in which either is no number; raises `#N/A` for other sizes. */
export function pairsIn(first: ArrayValue, second: ArrayValue): [number, number][] {
  const as = first.dense();
  const bs = second.dense();
  if (as.length !== bs.length) return raise('#N/A');
  const pairs: [number, number][] = [];
  as.forEach((a, at) => {
    const b = bs[at] ?? null;
    if (a instanceof CellError) raise(a);
    if (b instanceof CellError) raise(b);
    if (typeof a === 'number' && typeof b === 'number') pairs.push([a, b]);
  });
  return pairs;
}

/** The functions that once came as an add-in take no truth values for numbers. */
export function strictNumber(value: Scalar, date1904 = false): number {
  return typeof value === 'boolean' ? raise('#VALUE!') : toNumber(value, date1904);
}

/** One scalar of an argument that must not be an array or several cells. */
export function single(context: Context, value: Value): Scalar {
  if (value instanceof Reference || value instanceof ArrayValue) {
    const array = context.array(value);
    return array.size === 1 ? array.at(0, 0) : raise('#VALUE!');
  }
  return scalarOf(value);
}

const scalarOf = (value: Exclude<Value, Reference | ArrayValue>) =>
  typeof value === 'object' && value !== null && !(value instanceof CellError) ? raise('#VALUE!') : value;
