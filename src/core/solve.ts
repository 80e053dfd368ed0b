/**
 * Solving one equation in one unknown between two bounds.
 *
 * ITP method: I. F. D. Oliveira and R. H. C. Takahashi, ACM Transactions on Mathematical Software 47 (2021) 5. It
 * interpolates as fast as the secant method and is never slower than bisection by more than one step, so the number
 * of evaluations is known beforehand. It needs no derivative and copes with kinks and steps.
 */

export interface SolveOptions {
  /** Width of the last bracket; left out, as narrow as doubles of the bounds' size allow. */
  readonly tolerance?: number;
}

/** The function has the same sign at both bounds, so a root between them is not certain. */
export class NotBracketed extends Error {
  override readonly name = 'NotBracketed';

  constructor(
    readonly atLow: number,
    readonly atHigh: number,
  ) {
    super(`no change of sign: ${atLow} at the low bound, ${atHigh} at the high one`);
  }
}

/** The method's constants as its authors recommend them. */
const TRUNCATION = 0.2;
const SLACK = 1;

/**
 * A root of `f` between `low` and `high`, where `f` has opposite signs. Whatever `f` throws passes through; a
 * discontinuity that changes sign is found as a root is, so ask the function for its value where that may be.
 */
export function solveBracketed(
  f: (x: number) => number,
  low: number,
  high: number,
  options: SolveOptions = {},
): number {
  const steps = rootSteps(low, high, options);
  let step = steps.next(NaN);
  while (!step.done) step = steps.next(f(step.value));
  return step.value;
}

/** The same, for a function that cannot be called at once: yields where its value is wanted, and takes it in `next`. */
export function* rootSteps(
  low: number,
  high: number,
  { tolerance = 0 }: SolveOptions = {},
): Generator<number, number, number> {
  let a = Math.min(low, high);
  let b = Math.max(low, high);
  let fa = yield a;
  let fb = yield b;
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa < 0 !== fb < 0) || !Number.isFinite(fa) || !Number.isFinite(fb)) throw new NotBracketed(fa, fb);

  const grain = Number.EPSILON * Math.max(Math.abs(a), Math.abs(b));
  const half = Math.max(tolerance, 2 * grain) / 2;
  const pull = TRUNCATION / (b - a);
  // How far from the middle the next point may lie, so that bisection's number of steps plus the slack is kept.
  let room = half * 2 ** (Math.ceil(Math.log2((b - a) / (2 * half))) + SLACK);
  // The grain of doubles is let pass: else a bracket a hair too wide from rounding would cost another step.
  while (b - a > 2 * half + grain) {
    const middle = (a + b) / 2;
    const secant = (fb * a - fa * b) / (fb - fa);
    const towards = Math.sign(middle - secant);
    // At least half the last bracket, so that the point lands beyond the root and both bounds close in on it.
    const shift = Math.max(pull * (b - a) ** 2, half);
    const truncated = shift <= Math.abs(middle - secant) ? secant + towards * shift : middle;
    const radius = Math.max(0, room - (b - a) / 2);
    const x = Math.abs(truncated - middle) <= radius ? truncated : middle - towards * radius;
    const fx: number = yield x;
    if (fx === 0) return x;
    if (Number.isNaN(fx)) throw new RangeError(`no value at ${x}, between the bounds`);
    if (fx < 0 === fa < 0) [a, fa] = [x, fx];
    else [b, fb] = [x, fx];
    room /= 2;
  }
  return Math.abs(fa) < Math.abs(fb) ? a : b;
}
