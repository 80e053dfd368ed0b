/** Sums, counts, means and extremes. */
import { CellError } from '../../cells/value';
import { toNumber } from '../coerce';
import { ArrayValue, raise, Reference, type Scalar, type Value } from '../values';
import { allNumbersIn, eachNumber, numbersIn } from './numbersIn';
import { type Context, inContext } from './spec';

type Gather = (context: Context, args: readonly Value[]) => number[];

const extreme = (name: string, gather: Gather, isBetter: (a: number, b: number) => boolean) =>
  inContext(name, '(r)+', (context, ...args) => {
    let best: number | undefined;
    for (const value of gather(context, args)) if (best === undefined || isBetter(value, best)) best = value;
    return best ?? 0;
  });
const above = (a: number, b: number) => a > b;
const below = (a: number, b: number) => a < b;

export function sum(values: readonly number[]): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}

export const mean = (values: readonly number[]): number =>
  values.length === 0 ? raise('#DIV/0!') : sum(values) / values.length;

function isCounted(context: Context, value: Scalar): boolean {
  if (value instanceof CellError || value === null) return false;
  if (typeof value !== 'string') return true;
  try {
    toNumber(value, context.date1904);
    return true;
  } catch {
    return false;
  }
}

export const sums = [
  inContext('SUM', '(r)+', (context, ...args) => {
    let total = 0;
    eachNumber(context, args, (value) => (total += value));
    return total;
  }),
  inContext('SUMSQ', '(r)+', (context, ...args) => {
    let total = 0;
    eachNumber(context, args, (value) => (total += value * value));
    return total;
  }),
  inContext('PRODUCT', '(r)+', (context, ...args) => {
    let product = 1;
    let count = 0;
    eachNumber(context, args, (value) => {
      product *= value;
      count++;
    });
    return count === 0 ? 0 : product;
  }),
  inContext('PERCENTOF', 'rr', (context, part, whole) => {
    const all = sum(numbersIn(context, [whole]));
    return all === 0 ? raise('#DIV/0!') : sum(numbersIn(context, [part])) / all;
  }),
  inContext('AVERAGE', '(r)+', (context, ...args) => mean(numbersIn(context, args))),
  inContext('AVERAGEA', '(r)+', (context, ...args) => mean(allNumbersIn(context, args))),
  /** Numbers among the arguments; errors in them do not matter. */
  inContext('COUNT', '(r)+', (context, ...args) => {
    let count = 0;
    for (const arg of args) {
      if (arg instanceof Reference || arg instanceof ArrayValue) {
        context.each(arg, (value) => (count += typeof value === 'number' ? 1 : 0));
      } else if (arg === null || (isScalar(arg) && isCounted(context, arg))) count++;
    }
    return count;
  }),
  inContext('COUNTA', '(r)+', (context, ...args) => {
    let count = 0;
    for (const arg of args) {
      if (arg instanceof Reference || arg instanceof ArrayValue) {
        context.each(arg, (value) => (count += value === null ? 0 : 1));
      } else count++;
    }
    return count;
  }),
  inContext('COUNTBLANK', 'r', (context, range) => {
    let count = 0;
    context.array(range).each((value, times) => (count += value === null || value === '' ? times : 0));
    return count;
  }),
  extreme('MAX', numbersIn, above),
  extreme('MIN', numbersIn, below),
  extreme('MAXA', allNumbersIn, above),
  extreme('MINA', allNumbersIn, below),
];

const isScalar = (value: Value): value is Scalar =>
  typeof value !== 'object' || value === null || value instanceof CellError;
