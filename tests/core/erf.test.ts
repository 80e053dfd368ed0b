import { describe, expect, it } from 'vitest';
import { erf, erfInverse } from '../../src/core/erf';

describe('the error function', () => {
  // Abramowitz and Stegun, Handbook of Mathematical Functions, Table 7.1.
  it.each([
    [0, 0],
    [0.1, 0.112462916],
    [0.5, 0.5204998778],
    [1, 0.8427007929],
    [2, 0.995322265],
  ])('of %d is %d as the handbook prints it', (x, y) => {
    expect(erf(x)).toBeCloseTo(y, 10);
    expect(erf(-x)).toBeCloseTo(-y, 10);
  });

  it('is undone by its inverse', () => {
    for (const x of [-2.5, -0.3, 0, 1e-6, 0.01, 0.7, 1.9, 3]) expect(erfInverse(erf(x))).toBeCloseTo(x, 10);
  });
});
