import { Refusal } from '../../core/refusal';

/** How far the points lie from the value, as a share of it: rounding and curvature both spoil about the twelfth digit. */
const WIDE = 4e-3;
/** Of a plain central difference: near the cube root of a double's precision. */
const NARROW = 6e-6;
/** The two may differ by this much of the larger; by more where the function has a kink, a jump or an edge nearby. */
const AGREE = 1e-6;

/**
 * How a function changes with x, from its own values: where it is smooth by three pairs of points (a central difference
 * of sixth order), else close by, and on one side where the other is refused. NaN where both are.
 */
export function slopeAt(f: (x: number) => number, x: number): number {
  const valueAt = (share: number): number => {
    try {
      return f(x + share * Math.abs(x));
    } catch (error) {
      if (error instanceof Refusal) return NaN;
      throw error;
    }
  };
  const rise = (share: number): number => valueAt(share) - valueAt(-share);
  const near = closeBy(valueAt, rise) / Math.abs(x);
  const wide = (45 * rise(WIDE) - 9 * rise(2 * WIDE) + rise(3 * WIDE)) / (60 * WIDE) / Math.abs(x);
  return Math.abs(wide - near) <= AGREE * Math.max(Math.abs(wide), Math.abs(near)) ? wide : near;
}

/** The change for a change of x by its own size. */
function closeBy(valueAt: (share: number) => number, rise: (share: number) => number): number {
  const central = rise(NARROW) / (2 * NARROW);
  if (Number.isFinite(central)) return central;
  const [right = NaN, left = NaN] = [1, -1].map((side) => {
    const [here, one, two] = [0, side * NARROW, 2 * side * NARROW].map(valueAt) as [number, number, number];
    return (4 * one - 3 * here - two) / (2 * side * NARROW);
  });
  return Number.isFinite(right) ? right : left;
}
