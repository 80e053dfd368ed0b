/** Bessel functions of whole order, by integrals and series that converge to a double's precision (NIST Handbook, 10). */
import { besselJ } from '../../core/bessel';
import { Keep, raise } from '../values';
import { strictNumber } from './numbersIn';
import { plain } from './spec';

/** Beyond this the integrals take too long. */
const LARGEST = 1e4;

/** I_n(x) = 1/π ∫ e^(x cos t) cos(n t) dt from 0 to π (10.32.3); the trapezoidal rule converges faster than any power. */
function besselI(order: number, x: number): number {
  const intervals = Math.ceil(2 * Math.sqrt(Math.abs(x)) * 6) + order + 40;
  const term = (t: number) => Math.exp(Math.abs(x) * (Math.cos(t) - 1)) * Math.cos(order * t);
  let sum = (term(0) + term(Math.PI)) / 2;
  for (let k = 1; k < intervals; k++) sum += term((k * Math.PI) / intervals);
  const value = (sum / intervals) * Math.exp(Math.abs(x));
  return x < 0 && order % 2 === 1 ? -value : value;
}

/** K_n(x) = ∫ e^(−x cosh t) cosh(n t) dt from 0 to ∞ (10.32.9). */
function besselK(order: number, x: number): number {
  const step = 1 / 64;
  let sum = Math.exp(-x) / 2;
  for (let t = step; t < 800; t += step) {
    const exponent = -x * Math.cosh(t) + order * t;
    sum += (Math.exp(exponent) + Math.exp(exponent - 2 * order * t)) / 2;
    if (exponent < -745 && x * Math.sinh(t) > order) break;
  }
  return sum * step;
}

const EULER = 0.5772156649015329;

/** Neumann's series of Y₀ in those of the first kind (10.8.3), Y₁ as its derivative, then upward, which is stable. */
function besselY(order: number, x: number): number {
  if (x > 500) throw new Keep('BESSELY of so large a number is not calculated here');
  const log = Math.log(x / 2) + EULER;
  const most = Math.ceil(x / 2 + 6 * Math.cbrt(x)) + 12;
  const first = Array.from({ length: 2 * most + 2 }, (_, n) => besselJ(n, x));
  const j = (n: number): number => first[n] ?? 0;
  let y0 = log * j(0);
  let y1 = log * j(1) - j(0) / x;
  for (let k = 1; k <= most; k++) {
    const sign = k % 2 === 1 ? -1 : 1;
    y0 -= (2 * sign * j(2 * k)) / k;
    y1 += (sign * (j(2 * k - 1) - j(2 * k + 1))) / k;
  }
  let [below, value] = [(2 / Math.PI) * y0, (2 / Math.PI) * y1];
  if (order === 0) return below;
  for (let n = 1; n < order; n++) [below, value] = [value, ((2 * n) / x) * value - below];
  return value;
}

const kind = (name: string, of: (order: number, x: number) => number, isAbove0: boolean) =>
  plain(name, 'ff', (argument, n) => {
    const [x, order] = [strictNumber(argument), Math.trunc(strictNumber(n))];
    if (order < 0 || order > 1000 || Math.abs(x) > LARGEST || (isAbove0 && x <= 0)) return raise('#NUM!');
    return of(order, x);
  });

export const bessel = [
  kind('BESSELI', besselI, false),
  kind('BESSELJ', besselJ, false),
  kind('BESSELK', besselK, true),
  kind('BESSELY', besselY, true),
];
