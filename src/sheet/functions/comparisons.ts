/** Two samples beside one another: correlation, lines, tests. */
import { CellError } from '../../cells/value';
import type { ArrayValue } from '../values';
import { raise, type Value } from '../values';
import { tails } from './distributions';
import { numbersIn, pairsIn } from './numbersIn';
import { type Context, inContext, plain } from './spec';
import { variance } from './statistics';
import { mean, sum } from './sums';

interface Moments {
  readonly count: number;
  readonly meanX: number;
  readonly meanY: number;
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
}

function moments(pairs: readonly (readonly [number, number])[]): Moments {
  const meanX = mean(pairs.map(([x]) => x));
  const meanY = mean(pairs.map(([, y]) => y));
  return {
    count: pairs.length,
    meanX,
    meanY,
    xx: sum(pairs.map(([x]) => (x - meanX) ** 2)),
    xy: sum(pairs.map(([x, y]) => (x - meanX) * (y - meanY))),
    yy: sum(pairs.map(([, y]) => (y - meanY) ** 2)),
  };
}

const over = (value: number, divisor: number): number => (divisor === 0 ? raise('#DIV/0!') : value / divisor);

const ofPairs = (names: readonly string[], measure: (m: Moments) => number) =>
  names.map((name) => plain(name, 'aa', (xs, ys) => measure(moments(pairsIn(xs, ys)))));

const correlation = (m: Moments): number => over(m.xy, Math.sqrt(m.xx * m.yy));

/** First the y, then the x. */
const ofLine = (name: string, measure: (m: Moments) => number) =>
  plain(name, 'aa', (ys, xs) => measure(moments(pairsIn(xs, ys))));

const slope = (m: Moments): number => over(m.xy, m.xx);

function tTest(
  first: ArrayValue,
  second: ArrayValue,
  samples: number[][],
  tail: number,
  type: number,
): number {
  const [sides, kind] = [Math.trunc(tail), Math.trunc(type)];
  if ((sides !== 1 && sides !== 2) || kind < 1 || kind > 3) return raise('#NUM!');
  const [a = [], b = []] = samples;
  if (kind === 1) {
    const differences = pairsIn(first, second).map(([x, y]) => x - y);
    const t = over(mean(differences), Math.sqrt(variance(1)(differences) / differences.length));
    return sides * tails.tAbove(Math.abs(t), differences.length - 1);
  }
  const [va, vb] = [variance(1)(a), variance(1)(b)];
  const [n, m] = [a.length, b.length];
  if (kind === 2) {
    const pooled = ((n - 1) * va + (m - 1) * vb) / (n + m - 2);
    const t = over(mean(a) - mean(b), Math.sqrt(pooled * (1 / n + 1 / m)));
    return sides * tails.tAbove(Math.abs(t), n + m - 2);
  }
  const [sa, sb] = [va / n, vb / m];
  const freedom = over((sa + sb) ** 2, sa ** 2 / (n - 1) + sb ** 2 / (m - 1));
  return sides * tails.tAbove(Math.abs(over(mean(a) - mean(b), Math.sqrt(sa + sb))), freedom);
}

function fTest(samples: number[][]): number {
  const [a = [], b = []] = samples;
  const [va, vb] = [variance(1)(a), variance(1)(b)];
  if (va === 0 || vb === 0) return raise('#DIV/0!');
  const above = tails.fAbove(va / vb, a.length - 1, b.length - 1);
  return 2 * Math.min(above, 1 - above);
}

function zTest(values: readonly number[], center: number, spread: number | undefined): number {
  if (values.length === 0) return raise('#N/A');
  if (spread !== undefined && spread <= 0) return raise('#NUM!');
  const deviation = spread ?? Math.sqrt(variance(1)(values));
  return tails.normalAbove(over(mean(values) - center, deviation / Math.sqrt(values.length)));
}

function chiTest(actual: ArrayValue, expected: ArrayValue): number {
  const { rows, columns } = actual;
  if (actual.size !== expected.size || actual.size < 2) return raise('#N/A');
  const wanted = expected.dense();
  let chi = 0;
  actual.dense().forEach((value, i) => {
    const due = wanted[i] ?? null;
    if (value instanceof CellError) raise(value);
    if (due instanceof CellError) raise(due);
    if (typeof value !== 'number' || typeof due !== 'number') return;
    if (due < 0) raise('#NUM!');
    chi += over((value - due) ** 2, due);
  });
  const freedom = rows === 1 ? columns - 1 : columns === 1 ? rows - 1 : (rows - 1) * (columns - 1);
  return tails.chiAbove(chi, freedom);
}

const samplesOf = (context: Context, ...all: Value[]): number[][] =>
  all.map((one) => numbersIn(context, [one]));

export const comparisons = [
  ...ofPairs(['CORREL', 'PEARSON'], correlation),
  ...ofPairs(['RSQ'], (m) => over(m.xy ** 2, m.xx * m.yy)),
  ...ofPairs(['COVAR', 'COVARIANCE.P'], (m) => m.xy / m.count),
  ...ofPairs(['COVARIANCE.S'], (m) => over(m.xy, m.count - 1)),
  ofLine('SLOPE', slope),
  ofLine('INTERCEPT', (m) => m.meanY - slope(m) * m.meanX),
  ofLine('STEYX', (m) =>
    m.count < 3 ? raise('#DIV/0!') : Math.sqrt(Math.max(0, m.yy - over(m.xy ** 2, m.xx)) / (m.count - 2)),
  ),
  ...['FORECAST', 'FORECAST.LINEAR'].map((name) =>
    plain(name, 'naa', (x, ys, xs) => {
      const m = moments(pairsIn(xs, ys));
      return m.meanY + slope(m) * (x - m.meanX);
    }),
  ),
  ...['T.TEST', 'TTEST'].map((name) =>
    inContext(name, 'aann', (context, a, b, sides, type) =>
      tTest(a, b, samplesOf(context, a, b), sides, type),
    ),
  ),
  ...['F.TEST', 'FTEST'].map((name) =>
    inContext(name, 'aa', (context, a, b) => fTest(samplesOf(context, a, b))),
  ),
  ...['Z.TEST', 'ZTEST'].map((name) =>
    inContext(name, 'ann?', (context, values, center, spread) =>
      zTest(numbersIn(context, [values]), center, spread),
    ),
  ),
  ...['CHISQ.TEST', 'CHITEST'].map((name) => plain(name, 'aa', chiTest)),
];
