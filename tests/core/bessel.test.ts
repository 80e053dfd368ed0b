import { describe, expect, it } from 'vitest';
import { besselJ, zeroOfJ0 } from '../../src/core/bessel';

describe('the Bessel functions', () => {
  // Abramowitz and Stegun, Handbook of Mathematical Functions, Table 9.1.
  it.each([
    [0, 0, 1],
    [0, 1, 0.765197686557967],
    [0, 5, -0.177596771314338],
    [0, 10, -0.245935764451348],
    [1, 1, 0.440050585744934],
    [1, 5, -0.327579137591465],
    [1, 10, 0.043472746168861],
  ])('J%d(%d) is %d as the handbook prints it', (order, x, value) => {
    expect(besselJ(order, x)).toBeCloseTo(value, 13);
  });

  // Abramowitz and Stegun, Table 9.5: zeros of J0 and J1 there.
  it.each([
    [1, 2.4048255577, 0.5191474973],
    [2, 5.5200781103, -0.3402648065],
    [3, 8.6537279129, 0.2714522999],
    [20, 62.0484691902, -0.1012934989],
  ])('zero %d of J0 is %d', (n, zero, slope) => {
    expect(zeroOfJ0(n)).toBeCloseTo(zero, 10);
    expect(besselJ(1, zeroOfJ0(n))).toBeCloseTo(slope, 9);
  });

  it('satisfy their recurrence far out', () => {
    for (const x of [0.3, 7, 60, 600]) {
      expect(besselJ(0, x) + besselJ(2, x)).toBeCloseTo((2 / x) * besselJ(1, x), 12);
    }
  });
});
