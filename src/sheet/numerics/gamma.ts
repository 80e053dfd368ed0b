/** The gamma function and its incomplete integrals (NIST Handbook of Mathematical Functions, chapters 5 and 8). */

/** Lanczos' coefficients for g = 607/128 (P. Godfrey), good to the last digits of a double. Source: memory. */
const G = 607 / 128;
const COEFFICIENTS = [
  0.9999999999999971, 57.15623566586292, -59.59796035547549, 14.136097974741746, -0.4919138160976202,
  3.399464998481189e-5, 4.652362892704858e-5, -9.837447530487956e-5, 0.0001580887032249125,
  -0.00021026444172410488, 0.00021743961811521265, -0.0001643181065367639, 8.441822398385275e-5,
  -2.6190838401581408e-5, 3.6899182659531625e-6,
];

const lanczos = (x: number): number =>
  COEFFICIENTS.reduce((sum, coefficient, i) => (i === 0 ? coefficient : sum + coefficient / (x + i)), 0);

/** ln Γ(x) for x above 0. */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  if (x === 1 || x === 2) return 0;
  const z = x - 1;
  const base = z + G + 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(base) - base + Math.log(lanczos(z));
}

/** Γ(x); not finite at 0 and the negative whole numbers. */
export function gamma(x: number): number {
  if (Number.isInteger(x)) {
    if (x <= 0) return NaN;
    let product = 1;
    for (let factor = 2; factor < x && Number.isFinite(product); factor++) product *= factor;
    return product;
  }
  if (x < 0.5) return Math.PI / (Math.sin(Math.PI * x) * gamma(1 - x));
  const z = x - 1;
  const base = z + G + 0.5;
  // The power in two halves: the whole of it would overflow before the result does.
  const half = base ** ((z + 0.5) / 2);
  return Math.sqrt(2 * Math.PI) * half * Math.exp(-base) * half * lanczos(z);
}

const MOST_STEPS = 20_000;
const SMALLEST = 1e-300;

/** The part of Γ(a) below x, and above: P and Q. Each is exact where it is small. */
export function gammaParts(a: number, x: number): { readonly below: number; readonly above: number } {
  if (x <= 0) return { below: 0, above: 1 };
  if (x === Infinity) return { below: 1, above: 0 };
  const scale = Math.exp(a * Math.log(x) - x - logGamma(a));
  if (x < a + 1) {
    const below = Math.min(1, scale * series(a, x));
    return { below, above: 1 - below };
  }
  const above = Math.min(1, scale * fraction(a, x));
  return { below: 1 - above, above };
}

/** Σ xⁿ / (a (a+1) … (a+n)) */
function series(a: number, x: number): number {
  let term = 1 / a;
  let sum = term;
  for (let n = 1; n < MOST_STEPS && term > sum * 1e-17; n++) {
    term *= x / (a + n);
    sum += term;
  }
  return sum;
}

/** The continued fraction of Q by Lentz's method. */
function fraction(a: number, x: number): number {
  let b = x + 1 - a;
  let c = 1 / SMALLEST;
  let d = 1 / b;
  let value = d;
  for (let n = 1; n < MOST_STEPS; n++) {
    const numerator = -n * (n - a);
    b += 2;
    d = 1 / away(numerator * d + b);
    c = away(b + numerator / c);
    const change = c * d;
    value *= change;
    if (Math.abs(change - 1) < 1e-16) break;
  }
  return value;
}

export const away = (value: number): number => (Math.abs(value) < SMALLEST ? SMALLEST : value);
