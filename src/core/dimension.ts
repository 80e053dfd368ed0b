/** The base units that appear in mold design; money stands beside them so that a rate per hour cannot pass for a rate per pound. */
export const BASES = ['m', 'kg', 's', 'K', 'money'] as const;

/** Exponents in the order of `BASES`. Angles and counts are ratios: all zero. */
export type Dimension = readonly [number, number, number, number, number];

export const RATIO: Dimension = [0, 0, 0, 0, 0];

export function dimension(exponents: Partial<Record<(typeof BASES)[number], number>>): Dimension {
  const { m = 0, kg = 0, s = 0, K = 0, money = 0 } = exponents;
  return [m, kg, s, K, money];
}

const combine = (a: Dimension, b: Dimension, sign: 1 | -1): Dimension => [
  a[0] + sign * b[0],
  a[1] + sign * b[1],
  a[2] + sign * b[2],
  a[3] + sign * b[3],
  a[4] + sign * b[4],
];

export const times = (a: Dimension, b: Dimension): Dimension => combine(a, b, 1);
export const over = (a: Dimension, b: Dimension): Dimension => combine(a, b, -1);
export const power = (a: Dimension, n: number): Dimension => [
  a[0] * n,
  a[1] * n,
  a[2] * n,
  a[3] * n,
  a[4] * n,
];

// Roots and powers leave exponents such as 1.9999999999999998.
const NEGLIGIBLE = 1e-9;

export const sameDimension = (a: Dimension, b: Dimension): boolean =>
  a.every((exponent, i) => Math.abs(exponent - (b[i] ?? 0)) < NEGLIGIBLE);

/** Such as `m^-1 kg s^-2`; `1` for a ratio. */
export function dimensionText(d: Dimension): string {
  const parts = BASES.flatMap((base, i) => {
    const n = d[i] ?? 0;
    if (Math.abs(n) < NEGLIGIBLE) return [];
    return [n === 1 ? base : `${base}^${Number(n.toFixed(6))}`];
  });
  return parts.length > 0 ? parts.join(' ') : '1';
}
