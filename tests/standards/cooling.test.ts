import { describe, expect, it } from 'vitest';
import { differenceLeft, fourierAt, type CoolingPlace, type CoolingShape } from '../../src/core/cooling';

/**
 * The outside: the heat equation by implicit finite differences (Crank–Nicolson with four backward Euler steps first,
 * which damp the jump at the wall), in the dimensionless radius 0…1/2 of a thickness or diameter of 1.
 */
function finiteDifference(
  shape: CoolingShape,
  until: number,
  cells = 400,
  steps = 2000,
): { center: number; average: number } {
  const h = 0.5 / cells;
  const r = Array.from({ length: cells }, (_, i) => (i + 0.5) * h);
  const weight = (x: number): number => (shape === 'plate' ? 1 : x);
  let u = r.map(() => 1);
  let time = 0;
  const step = (dt: number, implicit: number): void => {
    const diagonal: number[] = [];
    const lower: number[] = [];
    const upper: number[] = [];
    const right: number[] = [];
    r.forEach((x, i) => {
      const west = weight(x - h / 2) / (weight(x) * h * h);
      // The wall lies half a cell beyond the last middle.
      const last = i === cells - 1;
      const east = ((last ? 2 : 1) * weight(x + h / 2)) / (weight(x) * h * h);
      const out = (u[i] ?? 0) * (west * (i > 0 ? 1 : 0) + east);
      const flow = (i > 0 ? west * (u[i - 1] ?? 0) : 0) + (last ? 0 : east * (u[i + 1] ?? 0)) - out;
      diagonal.push(1 + dt * implicit * ((i > 0 ? west : 0) + east));
      lower.push(i > 0 ? -dt * implicit * west : 0);
      upper.push(last ? 0 : -dt * implicit * east);
      right.push((u[i] ?? 0) + dt * (1 - implicit) * flow);
    });
    for (let i = 1; i < cells; i++) {
      const w = (lower[i] ?? 0) / (diagonal[i - 1] ?? 1);
      diagonal[i] = (diagonal[i] ?? 1) - w * (upper[i - 1] ?? 0);
      right[i] = (right[i] ?? 0) - w * (right[i - 1] ?? 0);
    }
    const next = [...right];
    for (let i = cells - 1; i >= 0; i--)
      next[i] = ((right[i] ?? 0) - (upper[i] ?? 0) * (next[i + 1] ?? 0)) / (diagonal[i] ?? 1);
    u = next;
    time += dt;
  };
  const dt = until / steps;
  for (let i = 0; i < 4; i++) step(dt / 4, 1);
  while (time < until - dt / 2) step(dt, 0.5);
  const total = r.reduce((sum, x) => sum + weight(x), 0);
  const [first = 0, second = 0] = u;
  return {
    // The middles nearest the center lie on a parabola.
    center: (9 * first - second) / 8,
    average: r.reduce((sum, x, i) => sum + weight(x) * (u[i] ?? 0), 0) / total,
  };
}

const cases = (['plate', 'round'] as const).flatMap((shape) =>
  [0.005, 0.02, 0.1, 0.3].map((fourier) => [shape, fourier] as const),
);

describe('the cooling series', () => {
  it.each(cases)(
    'of a %s at a Fourier number of %d agrees with implicit finite differences',
    (shape, fourier) => {
      const numeric = finiteDifference(shape, fourier);
      expect(differenceLeft(shape, 'center', fourier)).toBeCloseTo(numeric.center, 4);
      expect(differenceLeft(shape, 'average', fourier)).toBeCloseTo(numeric.average, 4);
    },
  );

  // First terms as heat conduction books print them: 4/π and 8/π² with π²; 1.6020 and 0.6917 with 4 × 2.4048².
  it.each([
    ['plate', 'center', 4 / Math.PI, Math.PI ** 2],
    ['plate', 'average', 8 / Math.PI ** 2, Math.PI ** 2],
    ['round', 'center', 1.601975, 23.13245],
    ['round', 'average', 0.69166, 23.13245],
  ] as const)('of a %s, %s, becomes its first term in time', (shape, place, share, rate) => {
    expect(differenceLeft(shape, place, 0.5)).toBeCloseTo(share * Math.exp(-rate * 0.5), 7);
  });

  it.each([
    ['plate', 'center'],
    ['plate', 'average'],
    ['round', 'center'],
    ['round', 'average'],
  ] as const)('of a %s, %s, is solved at every ratio', (shape: CoolingShape, place: CoolingPlace) => {
    for (const left of [0.999, 0.99, 0.9, 0.75, 0.5, 0.1, 1e-3, 1e-9]) {
      expect(differenceLeft(shape, place, fourierAt(shape, place, left)) / left).toBeCloseTo(1, 9);
    }
  });

  it.each(['plate', 'round'] as const)('of a %s has no seam between its short and its long form', (shape) => {
    expect(differenceLeft(shape, 'average', 1e-4 * (1 - 1e-9))).toBeCloseTo(
      differenceLeft(shape, 'average', 1e-4),
      7,
    );
    expect(differenceLeft(shape, 'center', 1e-4)).toBeCloseTo(1, 12);
  });
});
