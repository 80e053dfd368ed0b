/** Measures of a sample: spread, order, rank. */
import { CellError } from '../../cells/value';
import { ArrayValue, raise, Reference, type Value } from '../values';
import { roundTo } from './rounding';
import { allNumbersIn, numbersIn } from './numbersIn';
import { type Context, inContext, plain } from './spec';
import { mean, sum } from './sums';

type OfNumbers = (values: readonly number[]) => number;

const ofNumbers = (name: string, measure: OfNumbers) =>
  inContext(name, '(r)+', (context, ...args) => measure(numbersIn(context, args)));
const ofAll = (name: string, measure: OfNumbers) =>
  inContext(name, '(r)+', (context, ...args) => measure(allNumbersIn(context, args)));

/** Sum of a power of the distances from the mean. */
export function moment(values: readonly number[], order: number): number {
  const center = mean(values);
  return sum(values.map((value) => (value - center) ** order));
}

/** Sum of squares over the count less what the sample has cost. */
export const variance =
  (cost: 0 | 1): OfNumbers =>
  (values) =>
    values.length <= cost ? raise('#DIV/0!') : moment(values, 2) / (values.length - cost);
const deviation =
  (cost: 0 | 1): OfNumbers =>
  (values) =>
    Math.sqrt(variance(cost)(values));

export const ascending = (values: readonly number[]): number[] =>
  Array.from(Float64Array.from(values).sort());

const median: OfNumbers = (values) => {
  if (values.length === 0) return raise('#NUM!');
  const sorted = ascending(values);
  return (at(sorted, (sorted.length - 1) >> 1) + at(sorted, sorted.length >> 1)) / 2;
};

const at = (values: readonly number[], index: number): number => values[index] ?? raise('#NUM!');

/** Between two neighbours in order, by share; the position counts from 0. */
function between(sorted: readonly number[], position: number): number {
  const below = Math.floor(position);
  const share = position - below;
  const low = at(sorted, below);
  return share === 0 ? low : low + share * (at(sorted, below + 1) - low);
}

const inclusive = (values: readonly number[], share: number): number =>
  values.length === 0 || share < 0 || share > 1
    ? raise('#NUM!')
    : between(ascending(values), share * (values.length - 1));

function exclusive(values: readonly number[], share: number): number {
  // Rounded, so that 3/10 of 9 values is the third of them.
  const position = roundTo(share * (values.length + 1) - 1, 12);
  return share <= 0 || share >= 1 || position < 0 || position > values.length - 1
    ? raise('#NUM!')
    : between(ascending(values), position);
}

const percentile = (name: string, find: typeof inclusive) =>
  inContext(name, 'An', (context, values, share) => find(numbersIn(context, [values]), share));
const quartile = (name: string, find: typeof inclusive) =>
  inContext(name, 'An', (context, values, quarter) =>
    find(numbersIn(context, [values]), Math.trunc(quarter) / 4),
  );

/** The share of the values below one, found between neighbours; cut off, not rounded, to digits. */
const percentRank = (name: string, isInclusive: boolean) =>
  inContext(name, 'Ann?', (context, values, value, significance = 3) => {
    const sorted = ascending(numbersIn(context, [values]));
    const digits = Math.trunc(significance);
    if (digits < 1) return raise('#NUM!');
    if (sorted.length === 0) return raise('#NUM!');
    if (value < at(sorted, 0) || value > at(sorted, sorted.length - 1)) return raise('#N/A');
    const below = sorted.filter((one) => one <= value).length - 1;
    const low = at(sorted, below);
    const first = sorted.indexOf(low);
    const position = low === value ? first : below + (value - low) / (at(sorted, below + 1) - low);
    const share = isInclusive
      ? sorted.length === 1
        ? 1
        : position / (sorted.length - 1)
      : (position + 1) / (sorted.length + 1);
    return Math.floor(Number((share * 10 ** digits).toPrecision(14))) / 10 ** digits;
  });

const nth = (name: string, order: (sorted: number[], n: number) => number) =>
  inContext(name, 'An', (context, values, n) => order(ascending(numbersIn(context, [values])), Math.ceil(n)));

/** How often each value occurs, in the order of first occurrence. */
function counts(values: readonly number[]): Map<number, number> {
  const found = new Map<number, number>();
  for (const value of values) found.set(value, (found.get(value) ?? 0) + 1);
  return found;
}

function modes(values: readonly number[]): number[] {
  const found = counts(values);
  const most = Math.max(...found.values(), 0);
  return most < 2 ? raise('#N/A') : [...found].filter(([, count]) => count === most).map(([value]) => value);
}
/** In the order of rows; a text typed itself is no number here, even where it reads as one. */
const valuesInOrder = (context: Context, args: readonly Value[]): number[] =>
  numbersIn(
    context,
    args.map((arg) =>
      typeof arg === 'string' ? raise('#VALUE!') : arg instanceof Reference ? context.array(arg) : arg,
    ),
  );

function rank(
  context: Context,
  value: number,
  values: Value,
  order: number,
): { first: number; ties: number } {
  let before = 0;
  let ties = 0;
  context.each(values, (one) => {
    if (one instanceof CellError) raise(one);
    if (typeof one !== 'number') return;
    if (one === value) ties++;
    else if (order === 0 ? one > value : one < value) before++;
  });
  return ties === 0 ? raise('#N/A') : { first: before + 1, ties };
}
const rankEqual = (name: string) =>
  inContext(name, 'nrn?', (context, value, values, order = 0) => rank(context, value, values, order).first);

const skew: OfNumbers = (values) => {
  const n = values.length;
  const s = n < 3 ? 0 : deviation(1)(values);
  return s === 0 ? raise('#DIV/0!') : (moment(values, 3) / s ** 3) * (n / ((n - 1) * (n - 2)));
};

const excess: OfNumbers = (values) => {
  const n = values.length;
  const s = n < 4 ? 0 : deviation(1)(values);
  if (s === 0) return raise('#DIV/0!');
  return (
    ((moment(values, 4) / s ** 4) * n * (n + 1)) / ((n - 1) * (n - 2) * (n - 3)) -
    (3 * (n - 1) ** 2) / ((n - 2) * (n - 3))
  );
};

const onlyPositive: OfNumbers = (values) =>
  values.length === 0 || values.some((value) => value <= 0) ? raise('#NUM!') : values.length;

/** How many of the values fall up to each bound, and one count more of those beyond. */
function frequency(context: Context, data: Value, bins: Value): ArrayValue {
  const values = ascending(numbersIn(context, [data]));
  const bounds = numbersIn(context, [bins]);
  const result = new Array<number>(Math.max(bounds.length, 1) + 1).fill(0);
  const order = bounds.map((_, i) => i).sort((a, b) => at(bounds, a) - at(bounds, b));
  let next = 0;
  for (const index of order) {
    const from = next;
    while (next < values.length && at(values, next) <= at(bounds, index)) next++;
    result[index] = next - from;
  }
  if (bounds.length === 0) return ArrayValue.of([[0], [values.length]]);
  result[bounds.length] = values.length - next;
  return new ArrayValue(result.length, 1, result);
}

function trimmedMean(values: readonly number[], share: number): number {
  if (share < 0 || share >= 1 || values.length === 0) return raise('#NUM!');
  const cut = Math.floor(roundTo((values.length * share) / 2, 10));
  return mean(ascending(values).slice(cut, values.length - cut));
}

function probability(xs: ArrayValue, ps: ArrayValue, low: number, high: number): number {
  const values = xs.dense();
  const shares = ps.dense();
  if (values.length !== shares.length) return raise('#N/A');
  let within = 0;
  let all = 0;
  shares.forEach((share, i) => {
    const value = values[i] ?? null;
    if (share instanceof CellError) raise(share);
    if (value instanceof CellError) raise(value);
    if (typeof share !== 'number' || typeof value !== 'number') return;
    if (share < 0 || share > 1) raise('#NUM!');
    all += share;
    if (value >= low && value <= high) within += share;
  });
  return Math.abs(all - 1) > 1e-7 ? raise('#NUM!') : within;
}

export const statistics = [
  ofNumbers('MEDIAN', median),
  inContext('MODE', '(r)+', (context, ...args) => at(modes(valuesInOrder(context, args)), 0)),
  inContext('MODE.SNGL', '(r)+', (context, ...args) =>
    at(
      modes(
        valuesInOrder(
          context,
          args.filter((arg) => typeof arg !== 'string'),
        ),
      ),
      0,
    ),
  ),
  inContext('MODE.MULT', '(r)+', (context, ...args) =>
    ArrayValue.of(
      modes(
        valuesInOrder(
          context,
          args.filter((arg) => typeof arg !== 'string'),
        ),
      ).map((value) => [value]),
    ),
  ),
  ...['VAR', 'VAR.S'].map((name) => ofNumbers(name, variance(1))),
  ...['VARP', 'VAR.P'].map((name) => ofNumbers(name, variance(0))),
  ...['STDEV', 'STDEV.S'].map((name) => ofNumbers(name, deviation(1))),
  ...['STDEVP', 'STDEV.P'].map((name) => ofNumbers(name, deviation(0))),
  ofAll('VARA', variance(1)),
  ofAll('VARPA', variance(0)),
  ofAll('STDEVA', deviation(1)),
  ofAll('STDEVPA', deviation(0)),
  ofNumbers('AVEDEV', (values) => {
    if (values.length === 0) return raise('#NUM!');
    const center = mean(values);
    return mean(values.map((value) => Math.abs(value - center)));
  }),
  ofNumbers('DEVSQ', (values) => (values.length === 0 ? raise('#NUM!') : moment(values, 2))),
  ofNumbers('GEOMEAN', (values) => Math.exp(sum(values.map(Math.log)) / onlyPositive(values))),
  ofNumbers('HARMEAN', (values) => onlyPositive(values) / sum(values.map((value) => 1 / value))),
  ofNumbers('SKEW', skew),
  ofNumbers('SKEW.P', (values) => {
    const s = values.length < 3 ? 0 : deviation(0)(values);
    return s === 0 ? raise('#DIV/0!') : moment(values, 3) / s ** 3 / values.length;
  }),
  ofNumbers('KURT', excess),
  nth('LARGE', (sorted, n) => at(sorted, sorted.length - n)),
  nth('SMALL', (sorted, n) => at(sorted, n - 1)),
  percentile('PERCENTILE', inclusive),
  percentile('PERCENTILE.INC', inclusive),
  percentile('PERCENTILE.EXC', exclusive),
  quartile('QUARTILE', inclusive),
  quartile('QUARTILE.INC', inclusive),
  quartile('QUARTILE.EXC', exclusive),
  percentRank('PERCENTRANK', true),
  percentRank('PERCENTRANK.INC', true),
  percentRank('PERCENTRANK.EXC', false),
  rankEqual('RANK'),
  rankEqual('RANK.EQ'),
  inContext('RANK.AVG', 'nrn?', (context, value, values, order = 0) => {
    const { first, ties } = rank(context, value, values, order);
    return first + (ties - 1) / 2;
  }),
  inContext('FREQUENCY', 'AA', frequency),
  inContext('TRIMMEAN', 'An', (context, values, share) => trimmedMean(numbersIn(context, [values]), share)),
  plain('PROB', 'aann?', (xs, ps, low, high) => probability(xs, ps, low, high ?? low)),
  plain('STANDARDIZE', 'nnn', (x, center, deviates) =>
    deviates <= 0 ? raise('#NUM!') : (x - center) / deviates,
  ),
  plain('FISHER', 'n', Math.atanh),
  plain('FISHERINV', 'n', Math.tanh),
];
