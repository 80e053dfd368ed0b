/** The incomplete beta integral (NIST Handbook, 8.17). */
import { away, logGamma } from './gamma';

export const logBeta = (a: number, b: number): number => logGamma(a) + logGamma(b) - logGamma(a + b);

const MOST_STEPS = 20_000;

/** The part of B(a, b) below x, and above; each is exact where it is small. */
export function betaParts(
  a: number,
  b: number,
  x: number,
  /** 1 − x, where the caller has it with more digits. */
  rest = 1 - x,
): { readonly below: number; readonly above: number } {
  if (x <= 0) return { below: 0, above: 1 };
  if (rest <= 0) return { below: 1, above: 0 };
  const scale = Math.exp(a * Math.log(x) + b * Math.log(rest) - logBeta(a, b));
  if (x < (a + 1) / (a + b + 2)) {
    const below = Math.min(1, (scale * fraction(a, b, x)) / a);
    return { below, above: 1 - below };
  }
  const above = Math.min(1, (scale * fraction(b, a, rest)) / b);
  return { below: 1 - above, above };
}

/** The continued fraction of 8.17.22 by Lentz's method. */
function fraction(a: number, b: number, x: number): number {
  let c = 1;
  let d = 1 / away(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m < MOST_STEPS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / away(1 + even * d);
    c = away(1 + even / c);
    value *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / away(1 + odd * d);
    c = away(1 + odd / c);
    const change = d * c;
    value *= change;
    if (Math.abs(change - 1) < 1e-16) break;
  }
  return value;
}
