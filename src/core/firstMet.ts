import { NotBracketed, solveBracketed } from './solve';

/** Where a function first meets a target, going up from the low bound. */
export interface Met {
  readonly x: number;
  /** The target holds from here on over a stretch, and not at this point alone. */
  readonly stretch: boolean;
}

/** The function passes the target without meeting it. */
export class JumpsOver extends Error {
  override readonly name = 'JumpsOver';

  constructor(readonly at: number) {
    super(`jumps over the target at ${at}`);
  }
}

/** Enough to part what turns a few times between the bounds, and nothing to wait for. */
const PARTS = 64;
/** Of the way that the function goes: what rounding leaves. */
const SAME = 1e-12;
/** Of the same: near a jump a bracket closes without the target being met. */
const MET = 1e-6;
/** Of the width looked at: a target that still holds this far from a root holds on a stretch. */
const BESIDE = 1e-7;

/**
 * The lowest `x` between two bounds at which `off`, the distance from the target, is zero. It looks at points spread
 * over the whole width, so that a function that turns back between them is followed as well, and at the edge of a
 * stretch on which the target holds. Where `off` gives `undefined` there is no value, and the search passes by.
 */
export function firstMet(off: (x: number) => number | undefined, low: number, high: number): Met {
  const points = Array.from({ length: PARTS + 1 }, (_, i) =>
    i === PARTS ? high : low + ((high - low) * i) / PARTS,
  ).map((x) => ({ x, off: off(x) }));
  const reach = Math.max(...points.map((point) => Math.abs(point.off ?? 0)));
  const met = (value: number | undefined): boolean => value !== undefined && Math.abs(value) <= SAME * reach;
  const holdsBeyond = (x: number): boolean => {
    const next = x + BESIDE * (high - low);
    return next <= high ? met(off(next)) : false;
  };

  let jump: number | undefined;
  for (const [i, { x: b, off: offB }] of points.entries()) {
    const a = points[i - 1];
    if (met(offB)) {
      const x = a === undefined || a.off === undefined ? b : edge(off, met, a.x, b);
      // At a plain root the two differ by rounding alone, and the point looked at is the rounder number.
      return b - x > BESIDE * (high - low) ? { x, stretch: true } : { x: b, stretch: holdsBeyond(b) };
    }
    if (a?.off === undefined || offB === undefined || a.off < 0 === offB < 0) continue;
    const x = rootBetween(off, a.x, b);
    if (x === undefined) continue;
    if (Math.abs(off(x) ?? Infinity) > MET * reach) {
      jump ??= x;
      continue;
    }
    const before = x - BESIDE * (high - low);
    if (before > a.x && met(off(before))) return { x: edge(off, met, a.x, before), stretch: true };
    return { x, stretch: holdsBeyond(x) };
  }
  if (jump !== undefined) throw new JumpsOver(jump);
  throw new NotBracketed(points[0]?.off ?? NaN, points.at(-1)?.off ?? NaN);
}

/** A root in a bracket; none where there is no value on the way. */
function rootBetween(off: (x: number) => number | undefined, a: number, b: number): number | undefined {
  try {
    return solveBracketed((x) => off(x) ?? NaN, a, b);
  } catch (error) {
    if (error instanceof RangeError || error instanceof NotBracketed) return undefined;
    throw error;
  }
}

/** Between a point at which the target is not met and one at which it is, where it begins to be. */
function edge(
  off: (x: number) => number | undefined,
  met: (value: number | undefined) => boolean,
  not: number,
  is: number,
): number {
  let [a, b] = [not, is];
  for (;;) {
    const middle = (a + b) / 2;
    if (middle <= a || middle >= b) return b;
    if (met(off(middle))) b = middle;
    else a = middle;
  }
}
