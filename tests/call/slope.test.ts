import { describe, expect, it } from 'vitest';
import { slopeAt } from '../../src/call/tools/slope';
import { Refusal } from '../../src/core/refusal';

/** Functions with derivatives of any table of calculus. */
const KNOWN: readonly [string, (x: number) => number, (x: number) => number][] = [
  ['x', (x) => x, () => 1],
  ['1/x', (x) => 1 / x, (x) => -1 / x ** 2],
  ['x^4', (x) => x ** 4, (x) => 4 * x ** 3],
  ['x^-3', (x) => x ** -3, (x) => -3 * x ** -4],
  ['√x', Math.sqrt, (x) => 0.5 / Math.sqrt(x)],
  ['ln x', Math.log, (x) => 1 / x],
  ['exp x', Math.exp, Math.exp],
  ['sin x', Math.sin, Math.cos],
  ['tan x', Math.tan, (x) => 1 / Math.cos(x) ** 2],
  [
    '1/(sin x + 0.15 cos x)',
    (x) => 1 / (Math.sin(x) + 0.15 * Math.cos(x)),
    (x) => -(Math.cos(x) - 0.15 * Math.sin(x)) / (Math.sin(x) + 0.15 * Math.cos(x)) ** 2,
  ],
];

const refuse = (): never => {
  throw new Refusal('is too large');
};

describe('the slope of a function from its values', () => {
  it.each(KNOWN)('of %s is good to nine digits, for small and large x of either sign', (_, f, slope) => {
    for (const x of [1e-3, 0.0873, 0.7, 1.2]) {
      const exact = slope(x);
      expect(Math.abs(slopeAt(f, x) - exact)).toBeLessThan(1e-9 * Math.abs(exact));
      // The same curve read from right to left.
      expect(Math.abs(slopeAt((y) => f(-y), -x) + exact)).toBeLessThan(1e-9 * Math.abs(exact));
    }
  });

  it('near a kink is that of the side where the value lies', () => {
    expect(slopeAt((x) => Math.max(x, 1), 1.001)).toBeCloseTo(1, 9);
    expect(slopeAt((x) => Math.max(x, 1), 0.999)).toBe(0);
  });

  it('at an edge, beyond which the function is refused, is that of the side that there is', () => {
    expect(slopeAt((x) => (x > 2 ? refuse() : x ** 2), 2)).toBeCloseTo(4, 8);
    expect(slopeAt((x) => (x < 2 ? refuse() : x ** 2), 2)).toBeCloseTo(4, 8);
    expect(slopeAt((x) => (x > 2.001 ? refuse() : x ** 2), 2)).toBeCloseTo(4, 8);
    expect(slopeAt((x) => (x === 2 ? 4 : refuse()), 2)).toBeNaN();
  });

  it('passes on what is no refusal', () => {
    expect(() =>
      slopeAt(() => {
        throw new TypeError('a fault');
      }, 1),
    ).toThrow('a fault');
  });
});
