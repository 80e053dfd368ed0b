import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NotBracketed, solveBracketed } from '../../src/core/solve';

/** Counts how often a function is asked. */
function counted(f: (x: number) => number): { f: (x: number) => number; asked: () => number } {
  let n = 0;
  return { f: (x) => (n++, f(x)), asked: () => n };
}

const bisections = (low: number, high: number, tolerance: number): number =>
  Math.ceil(Math.log2((high - low) / tolerance));

describe('solving between bounds', () => {
  // Roots known in closed form, or printed: Dottie number 0.7390851332151607 (OEIS A003957).
  it.each([
    ['x² = 2', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['cos x = x', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['e^x = 10', (x: number) => Math.exp(x) - 10, -5, 20, Math.log(10)],
    ['a falling power over ten decades', (x: number) => 1e-9 / x ** 3 - 1, 1e-6, 1, 1e-3],
    ['a triple root', (x: number) => (x - 1) ** 3, -2, 5, 1],
    ['a kink', (x: number) => (x < 0.3 ? 10 * (x - 0.3) : 0.01 * (x - 0.3)), 0, 1, 0.3],
    ['a step', (x: number) => (x < 0.7 ? -1 : 5), 0, 1, 0.7],
  ] as const)('finds the root of %s to the last digits', (_, f, low, high, root) => {
    const x = solveBracketed(f, low, high);
    expect(Math.abs(x - root)).toBeLessThanOrEqual(1e-15 * Math.max(Math.abs(low), Math.abs(high)) * 2);
  });

  it('takes bounds at which the function is zero', () => {
    expect(solveBracketed((x) => x - 1, 1, 2)).toBe(1);
    expect(solveBracketed((x) => x - 2, 1, 2)).toBe(2);
  });

  it.each([
    ['the same sign at both bounds', (x: number) => x * x + 1],
    ['no number at a bound', (x: number) => Math.log(x)],
  ] as const)('refuses %s', (_, f) => {
    expect(() => solveBracketed(f, -1, 3)).toThrow(NotBracketed);
  });

  it('takes the bounds in either order', () => {
    expect(solveBracketed((x) => x * x - 2, 2, 0)).toBeCloseTo(Math.SQRT2, 14);
  });

  it('refuses a function without a value between the bounds', () => {
    expect(() => solveBracketed((x) => Math.sqrt(x * x - 1) * Math.sign(x), -2, 3)).toThrow('no value at');
  });

  it('lets through what the function throws', () => {
    const f = (x: number): number => {
      if (x > -1 && x < 2) throw new RangeError('not here');
      return x;
    };
    expect(() => solveBracketed(f, -1, 2)).toThrow('not here');
  });

  // The bound that the authors prove: bisection's steps plus the slack of one, and the two ends.
  it('never asks more often than bisection and one, whatever the monotone function', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        fc.integer({ min: -12, max: 12 }),
        fc.double({ min: 0.1, max: 30, noNaN: true }),
        (root, decade, steepness) => {
          const scale = 10 ** decade;
          const { f, asked } = counted((x) => Math.sinh(steepness * (x / scale - root)));
          const tolerance = 1e-12 * scale;
          const x = solveBracketed(f, 0, scale, { tolerance });
          expect(Math.abs(x - root * scale)).toBeLessThanOrEqual(tolerance);
          expect(asked()).toBeLessThanOrEqual(bisections(0, scale, tolerance) + 1 + 2);
        },
      ),
    );
  });

  it('asks far less often than bisection where the function is smooth', () => {
    const { f, asked } = counted((x) => x ** 3 - 2 * x - 5);
    // Wallis’s cubic, root printed as 2.0945514815423265 (OEIS A007493).
    expect(solveBracketed(f, 2, 3, { tolerance: 1e-14 })).toBeCloseTo(2.0945514815423265, 13);
    expect(asked()).toBeLessThan(15);
  });
});
