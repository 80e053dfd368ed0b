/** The value of one parameter that fits a model to measurements best. */
export interface Fit {
  readonly x: number;
  readonly standardError: number;
  /** The largest distance of a measurement from the model, with its sign. */
  readonly largestMiss: number;
}

/** The best value lies at an end of what was looked at, so a better one may lie beyond. */
export class BestAtEnd extends Error {
  override readonly name = 'BestAtEnd';

  constructor(readonly end: 'low' | 'high') {
    super(`the best value lies at ${end}`);
  }
}

/** The model gives the same whatever the parameter is. */
export class NoInfluence extends Error {
  override readonly name = 'NoInfluence';
}

/** Points looked at first, so that of several valleys the deepest is followed. */
const PARTS = 200;
const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** Of a central difference: balances rounding against curvature. */
const RELATIVE_STEP = 6e-6;
/** Of the width: as near to an end the minimum counts as lying on it. */
const AT_END = 1e-7;
const MOST_POLISHING = 20;

/**
 * Least squares in one parameter between two bounds: the deepest of the valleys that a scan sees, narrowed by golden
 * sections and polished by Gauss and Newton's steps. `residuals` gives measured less predicted, or `undefined` where
 * the model has no value.
 */
export function leastSquares(
  residuals: (x: number) => readonly number[] | undefined,
  low: number,
  high: number,
): Fit {
  const width = high - low;
  const sum = (x: number): number => {
    const found = residuals(x);
    return found === undefined ? Infinity : found.reduce((total, r) => total + r * r, 0);
  };
  const points = Array.from({ length: PARTS + 1 }, (_, i) =>
    i === PARTS ? high : low + (width * i) / PARTS,
  );
  const sums = points.map(sum);
  const least = Math.min(...sums);
  if (sums.every((one) => one === least)) throw new NoInfluence();
  const at = sums.indexOf(least);
  let x = golden(sum, points[Math.max(0, at - 1)] ?? low, points[Math.min(PARTS, at + 1)] ?? high);

  const slopes = (where: number): readonly number[] => {
    const step = Math.max(Math.abs(where), width) * RELATIVE_STEP;
    const [from, to] = [Math.max(low, where - step), Math.min(high, where + step)];
    const [before, after] = [residuals(from), residuals(to)];
    if (!before || !after) return [];
    // Of what is predicted: the residual falls as it rises.
    return before.map((r, i) => (r - (after[i] as number)) / (to - from));
  };
  for (let i = 0; i < MOST_POLISHING; i++) {
    const [r, s] = [residuals(x) ?? [], slopes(x)];
    const steep = s.reduce((total, one) => total + one * one, 0);
    if (steep === 0) break;
    const next = x + s.reduce((total, one, k) => total + one * (r[k] as number), 0) / steep;
    // Near the minimum the sums differ by rounding alone, and the step knows better.
    if (!(next >= low && next <= high) || sum(next) > sum(x) * (1 + 1e-9)) break;
    const moved = Math.abs(next - x);
    x = next;
    if (moved <= Number.EPSILON * width) break;
  }

  if (x - low <= AT_END * width) throw new BestAtEnd('low');
  if (high - x <= AT_END * width) throw new BestAtEnd('high');
  const r = residuals(x) ?? [];
  const steep = slopes(x).reduce((total, one) => total + one * one, 0);
  if (steep === 0) throw new NoInfluence();
  return {
    x,
    standardError: Math.sqrt(sum(x) / (r.length - 1) / steep),
    largestMiss: r.reduce((largest, one) => (Math.abs(one) > Math.abs(largest) ? one : largest), 0),
  };
}

function golden(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  let [x1, x2] = [b - GOLDEN * (b - a), a + GOLDEN * (b - a)];
  let [f1, f2] = [f(x1), f(x2)];
  // Below the root of a double's precision a minimum is flat.
  while (b - a > 1e-9 * (high - low)) {
    if (f1 <= f2) {
      [b, x2, f2] = [x2, x1, f1];
      x1 = b - GOLDEN * (b - a);
      f1 = f(x1);
    } else {
      [a, x1, f1] = [x1, x2, f2];
      x2 = a + GOLDEN * (b - a);
      f2 = f(x2);
    }
  }
  return f1 <= f2 ? x1 : x2;
}
