/** The normal distribution, exact in its tails. */
import { gammaParts } from './gamma';
import { inverse } from './inverse';

/** What lies beyond ±x of e^(−t²), as a share: 1 − erf(x). */
export function erfc(x: number): number {
  return x < 0 ? 2 - erfc(-x) : gammaParts(0.5, x * x).above;
}

export const erf = (x: number): number => Math.sign(x) * gammaParts(0.5, x * x).below;

export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

export const normalBelow = (z: number): number => erfc(-z / Math.SQRT2) / 2;

/** The z below which a share p lies. */
export function normalInverse(p: number): number {
  if (p === 0.5) return 0;
  // From the side where the share is small, which keeps its digits.
  if (p > 0.5) return -normalInverse(1 - p);
  return inverse(normalBelow, normalDensity, p, -40, 0);
}
