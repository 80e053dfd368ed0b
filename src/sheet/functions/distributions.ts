/** Distributions of probability; each also under the name that it had before. */
import { betaParts, logBeta } from '../numerics/beta';
import { gamma, gammaParts, logGamma } from '../numerics/gamma';
import { inverse, inverseAbove0, smallestWhole } from '../numerics/inverse';
import { erf, erfc, normalBelow, normalDensity, normalInverse } from '../numerics/normal';
import { raise } from '../values';
import { strictNumber } from './numbersIn';
import { plain, type SheetFunction } from './spec';

const unless = (isWrong: boolean): void => {
  if (isWrong) raise('#NUM!');
};
const share = (p: number): void => {
  unless(!(p > 0 && p < 1));
};

// A continuous distribution: its density and the shares below and above.

const normal = (x: number, mean: number, spread: number, isCumulative: boolean): number => {
  unless(spread <= 0);
  const z = (x - mean) / spread;
  return isCumulative ? normalBelow(z) : normalDensity(z) / spread;
};
const normalAt = (p: number, mean: number, spread: number): number => {
  share(p);
  unless(spread <= 0);
  return mean + spread * normalInverse(p);
};

const logNormal = (x: number, mean: number, spread: number, isCumulative: boolean): number => {
  unless(x <= 0);
  return normal(Math.log(x), mean, spread, isCumulative) / (isCumulative ? 1 : x);
};
const logNormalAt = (p: number, mean: number, spread: number): number => Math.exp(normalAt(p, mean, spread));

const gammaDensity = (x: number, shape: number, scale: number): number =>
  x === 0
    ? shape < 1
      ? raise('#NUM!')
      : shape === 1
        ? 1 / scale
        : 0
    : Math.exp((shape - 1) * Math.log(x / scale) - x / scale - logGamma(shape)) / scale;
const gammaShare = (x: number, shape: number, scale: number, isCumulative: boolean): number => {
  unless(x < 0 || shape <= 0 || scale <= 0);
  return isCumulative ? gammaParts(shape, x / scale).below : gammaDensity(x, shape, scale);
};
const gammaAt = (p: number, shape: number, scale: number): number => {
  unless(p < 0 || p >= 1 || shape <= 0 || scale <= 0);
  if (p === 0) return 0;
  const density = (x: number) => gammaDensity(x, shape, 1);
  return scale * inverseAbove0((x) => gammaParts(shape, x).below, density, p, shape);
};
/** From the share above, which keeps the digits of a small one. */
const gammaFromAbove = (p: number, shape: number, scale: number): number => {
  const density = (x: number) => gammaDensity(x, shape, 1);
  return p === 1 ? 0 : scale * inverseAbove0((x) => -gammaParts(shape, x).above, density, -p, shape);
};

const betaShare = (
  x: number,
  a: number,
  b: number,
  isCumulative: boolean,
  low: number,
  high: number,
): number => {
  unless(a <= 0 || b <= 0 || x < low || x > high || low === high);
  const z = (x - low) / (high - low);
  if (isCumulative) return betaParts(a, b, z, (high - x) / (high - low)).below;
  unless((z === 0 && a < 1) || (z === 1 && b < 1));
  return betaDensity(z, a, b) / (high - low);
};
const betaDensity = (z: number, a: number, b: number): number =>
  z ** (a - 1) * (1 - z) ** (b - 1) * Math.exp(-logBeta(a, b));
const betaAt = (p: number, a: number, b: number, low: number, high: number): number => {
  unless(p <= 0 || p > 1 || a <= 0 || b <= 0 || low >= high);
  if (p === 1) return high;
  return low + (high - low) * unitBetaAt(p, a, b);
};
const unitBetaAt = (p: number, a: number, b: number): number =>
  inverse(
    (x) => betaParts(a, b, x).below,
    (x) => betaDensity(x, a, b),
    p,
    0,
    1,
  );

const freedom = (value: number): number => {
  const n = Math.trunc(value);
  return n < 1 || n > 1e10 ? raise('#NUM!') : n;
};

const tAbove = (t: number, n: number): number => {
  const tail = betaParts(n / 2, 0.5, n / (n + t * t), (t * t) / (n + t * t)).below / 2;
  return t >= 0 ? tail : 1 - tail;
};
const tDensity = (t: number, n: number): number =>
  Math.exp(-logBeta(n / 2, 0.5) - ((n + 1) / 2) * Math.log1p((t * t) / n)) / Math.sqrt(n);
/** The t beyond which a share lies, for shares up to a half. */
const tFromAbove = (p: number, n: number): number =>
  p === 0.5
    ? 0
    : inverseAbove0(
        (t) => -tAbove(t, n),
        (t) => tDensity(t, n),
        -p,
        1,
      );

const fParts = (x: number, n: number, m: number) =>
  betaParts(n / 2, m / 2, (n * x) / (n * x + m), m / (n * x + m));
const fDensity = (x: number, n: number, m: number): number =>
  Math.exp(
    (n / 2) * Math.log(n / m) +
      (n / 2 - 1) * Math.log(x) -
      ((n + m) / 2) * Math.log1p((n * x) / m) -
      logBeta(n / 2, m / 2),
  );
const fShare = (x: number, n: number, m: number, isCumulative: boolean): number => {
  const [a, b] = [freedom(n), freedom(m)];
  unless(x < 0);
  if (isCumulative) return fParts(x, a, b).below;
  return x === 0 ? (a === 2 ? 1 : a < 2 ? raise('#NUM!') : 0) : fDensity(x, a, b);
};
const fAbove = (x: number, n: number, m: number): number => {
  const [a, b] = [freedom(n), freedom(m)];
  unless(x < 0);
  return fParts(x, a, b).above;
};
const fFromAbove = (p: number, n: number, m: number): number => {
  const [a, b] = [freedom(n), freedom(m)];
  unless(p <= 0 || p > 1);
  if (p === 1) return 0;
  return inverseAbove0(
    (x) => -fParts(x, a, b).above,
    (x) => fDensity(x, a, b),
    -p,
    1,
  );
};
const fAt = (p: number, n: number, m: number): number => {
  const [a, b] = [freedom(n), freedom(m)];
  unless(p < 0 || p >= 1);
  if (p === 0) return 0;
  return inverseAbove0(
    (x) => fParts(x, a, b).below,
    (x) => fDensity(x, a, b),
    p,
    1,
  );
};

const chiAbove = (x: number, n: number): number => {
  unless(x < 0);
  return gammaParts(freedom(n) / 2, x / 2).above;
};
const chiFromAbove = (p: number, n: number): number => {
  const k = freedom(n);
  unless(p <= 0 || p > 1);
  return gammaFromAbove(p, k / 2, 2);
};

const exponential = (x: number, rate: number, isCumulative: boolean): number => {
  unless(x < 0 || rate <= 0);
  return isCumulative ? -Math.expm1(-rate * x) : rate * Math.exp(-rate * x);
};
const weibull = (x: number, shape: number, scale: number, isCumulative: boolean): number => {
  unless(x < 0 || shape <= 0 || scale <= 0);
  const power = (x / scale) ** shape;
  return isCumulative ? -Math.expm1(-power) : (shape / scale) * (x / scale) ** (shape - 1) * Math.exp(-power);
};

// Distributions over whole numbers.

const logChoose = (n: number, k: number): number => logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);

const binomialOf = (k: number, n: number, p: number): number => {
  if (p === 0 || p === 1) return k === p * n ? 1 : 0;
  return Math.exp(logChoose(n, k) + k * Math.log(p) + (n - k) * Math.log1p(-p));
};
const binomialUpTo = (k: number, n: number, p: number): number =>
  k >= n ? 1 : betaParts(k + 1, n - k, p).above;
const binomial = (successes: number, trials: number, p: number, isCumulative: boolean): number => {
  const [k, n] = [Math.trunc(successes), Math.trunc(trials)];
  unless(k < 0 || k > n || p < 0 || p > 1);
  return isCumulative ? binomialUpTo(k, n, p) : binomialOf(k, n, p);
};
const binomialAt = (trials: number, p: number, criterion: number): number => {
  const n = Math.trunc(trials);
  unless(n < 0 || p < 0 || p > 1 || criterion < 0 || criterion > 1);
  return smallestWhole((k) => binomialUpTo(k, n, p), criterion, n);
};
const binomialRange = (trials: number, p: number, from: number, to: number): number => {
  const [n, a, b] = [Math.trunc(trials), Math.trunc(from), Math.trunc(to)];
  unless(n < 0 || p < 0 || p > 1 || a < 0 || a > n || b < a || b > n);
  return a === b ? binomialOf(a, n, p) : binomialUpTo(b, n, p) - (a === 0 ? 0 : binomialUpTo(a - 1, n, p));
};

const negativeBinomial = (failures: number, successes: number, p: number, isCumulative: boolean): number => {
  const [f, s] = [Math.trunc(failures), Math.trunc(successes)];
  unless(f < 0 || s < 1 || p < 0 || p > 1);
  if (isCumulative) return betaParts(s, f + 1, p).below;
  if (p === 0 || p === 1) return p === 1 && f === 0 ? 1 : 0;
  return Math.exp(logChoose(f + s - 1, f) + s * Math.log(p) + f * Math.log1p(-p));
};

const poisson = (x: number, mean: number, isCumulative: boolean): number => {
  const k = Math.trunc(x);
  unless(k < 0 || mean < 0);
  if (mean === 0) return k === 0 || isCumulative ? 1 : 0;
  return isCumulative ? gammaParts(k + 1, mean).above : Math.exp(k * Math.log(mean) - mean - logGamma(k + 1));
};

const hypergeometric = (
  found: number,
  sample: number,
  marked: number,
  population: number,
  isCumulative: boolean,
): number => {
  const [x, n, m, all] = [found, sample, marked, population].map(Math.trunc) as [
    number,
    number,
    number,
    number,
  ];
  unless(n < 0 || m < 0 || all <= 0 || n > all || m > all || x < 0 || x > Math.min(n, m));
  const least = Math.max(0, n + m - all);
  if (x < least) return isCumulative ? 0 : raise('#NUM!');
  const of = (k: number) => Math.exp(logChoose(m, k) + logChoose(all - m, n - k) - logChoose(all, n));
  if (!isCumulative) return of(x);
  // Downward from x: each from the one above it, until they no longer count.
  let term = of(x);
  let sum = 0;
  for (let k = x; k >= least && term > sum * 1e-17; k--) {
    sum += term;
    term *= (k * (all - m - n + k)) / ((m - k + 1) * (n - k + 1));
  }
  return Math.min(1, sum);
};

const confidence = (alpha: number, spread: number, size: number, isT: boolean): number => {
  const n = Math.trunc(size);
  unless(alpha <= 0 || alpha >= 1 || spread <= 0 || n < 1);
  if (isT && n === 1) return raise('#DIV/0!');
  const factor = isT ? tFromAbove(alpha / 2, n - 1) : -normalInverse(alpha / 2);
  return (factor * spread) / Math.sqrt(n);
};

const gammaOf = (x: number): number => (x <= 0 && Number.isInteger(x) ? raise('#NUM!') : gamma(x));
const logGammaOf = (x: number): number => (x <= 0 ? raise('#NUM!') : logGamma(x));

/** One function under several names. */
const named = (names: readonly string[], make: (name: string) => SheetFunction): SheetFunction[] =>
  names.map((name) => make(name));

export const distributions: readonly SheetFunction[] = [
  ...named(['NORM.DIST', 'NORMDIST'], (name) => plain(name, 'nnnb', normal)),
  ...named(['NORM.INV', 'NORMINV'], (name) => plain(name, 'nnn', normalAt)),
  plain('NORM.S.DIST', 'nb', (z, isCumulative) => normal(z, 0, 1, isCumulative)),
  plain('NORMSDIST', 'n', normalBelow),
  ...named(['NORM.S.INV', 'NORMSINV'], (name) => plain(name, 'n', (p) => normalAt(p, 0, 1))),
  plain('PHI', 'n', normalDensity),
  plain('GAUSS', 'n', (z) => (Math.sign(z) * gammaParts(0.5, (z * z) / 2).below) / 2),
  plain('ERF', 'ff?', (from, to) => {
    const a = strictNumber(from);
    return to === undefined ? erf(a) : erf(strictNumber(to)) - erf(a);
  }),
  plain('ERF.PRECISE', 'f', (x) => erf(strictNumber(x))),
  ...named(['ERFC', 'ERFC.PRECISE'], (name) => plain(name, 'f', (x) => erfc(strictNumber(x)))),
  plain('LOGNORM.DIST', 'nnnb', logNormal),
  plain('LOGNORMDIST', 'nnn', (x, mean, spread) => logNormal(x, mean, spread, true)),
  ...named(['LOGNORM.INV', 'LOGINV'], (name) => plain(name, 'nnn', logNormalAt)),
  plain('GAMMA', 'n', gammaOf),
  ...named(['GAMMALN', 'GAMMALN.PRECISE'], (name) => plain(name, 'n', logGammaOf)),
  ...named(['GAMMA.DIST', 'GAMMADIST'], (name) => plain(name, 'nnnb', gammaShare)),
  ...named(['GAMMA.INV', 'GAMMAINV'], (name) => plain(name, 'nnn', gammaAt)),
  plain('BETA.DIST', 'nnnbn?n?', (x, a, b, isCumulative, low = 0, high = 1) =>
    betaShare(x, a, b, isCumulative, low, high),
  ),
  plain('BETADIST', 'nnnn?n?', (x, a, b, low = 0, high = 1) => betaShare(x, a, b, true, low, high)),
  ...named(['BETA.INV', 'BETAINV'], (name) =>
    plain(name, 'nnnn?n?', (p, a, b, low = 0, high = 1) => betaAt(p, a, b, low, high)),
  ),
  plain('T.DIST', 'nnb', (t, n, isCumulative) =>
    isCumulative ? tAbove(-t, freedom(n)) : tDensity(t, freedom(n)),
  ),
  plain('T.DIST.RT', 'nn', (t, n) => tAbove(t, freedom(n))),
  plain('T.DIST.2T', 'nn', (t, n) => (t < 0 ? raise('#NUM!') : 2 * tAbove(t, freedom(n)))),
  plain('TDIST', 'nnn', (t, n, tails) => {
    const sides = Math.trunc(tails);
    unless(t < 0 || (sides !== 1 && sides !== 2));
    return sides * tAbove(t, freedom(n));
  }),
  plain('T.INV', 'nn', (p, n) => {
    share(p);
    return p < 0.5 ? -tFromAbove(p, freedom(n)) : tFromAbove(1 - p, freedom(n));
  }),
  ...named(['T.INV.2T', 'TINV'], (name) =>
    plain(name, 'nn', (p, n) => {
      unless(p <= 0 || p > 1);
      return tFromAbove(p / 2, freedom(n));
    }),
  ),
  plain('F.DIST', 'nnnb', fShare),
  ...named(['F.DIST.RT', 'FDIST'], (name) => plain(name, 'nnn', fAbove)),
  plain('F.INV', 'nnn', fAt),
  ...named(['F.INV.RT', 'FINV'], (name) => plain(name, 'nnn', fFromAbove)),
  plain('CHISQ.DIST', 'nnb', (x, n, isCumulative) => gammaShare(x, freedom(n) / 2, 2, isCumulative)),
  ...named(['CHISQ.DIST.RT', 'CHIDIST'], (name) => plain(name, 'nn', chiAbove)),
  plain('CHISQ.INV', 'nn', (p, n) => gammaAt(p, freedom(n) / 2, 2)),
  ...named(['CHISQ.INV.RT', 'CHIINV'], (name) => plain(name, 'nn', chiFromAbove)),
  ...named(['EXPON.DIST', 'EXPONDIST'], (name) => plain(name, 'nnb', exponential)),
  ...named(['WEIBULL.DIST', 'WEIBULL'], (name) => plain(name, 'nnnb', weibull)),
  ...named(['BINOM.DIST', 'BINOMDIST'], (name) => plain(name, 'nnnb', binomial)),
  ...named(['BINOM.INV', 'CRITBINOM'], (name) => plain(name, 'nnn', binomialAt)),
  plain('BINOM.DIST.RANGE', 'nnnn?', (n, p, from, to) => binomialRange(n, p, from, to ?? from)),
  plain('NEGBINOM.DIST', 'nnnb', negativeBinomial),
  plain('NEGBINOMDIST', 'nnn', (f, s, p) => negativeBinomial(f, s, p, false)),
  ...named(['POISSON.DIST', 'POISSON'], (name) => plain(name, 'nnb', poisson)),
  plain('HYPGEOM.DIST', 'nnnnb', hypergeometric),
  plain('HYPGEOMDIST', 'nnnn', (x, n, m, all) => hypergeometric(x, n, m, all, false)),
  ...named(['CONFIDENCE.NORM', 'CONFIDENCE'], (name) =>
    plain(name, 'nnn', (alpha, spread, size) => confidence(alpha, spread, size, false)),
  ),
  plain('CONFIDENCE.T', 'nnn', (alpha, spread, size) => confidence(alpha, spread, size, true)),
];

export const tails = { tAbove, fAbove, chiAbove, normalAbove: (z: number) => normalBelow(-z) };
