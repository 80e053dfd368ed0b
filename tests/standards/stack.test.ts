import jstat from 'jstat';
import { describe, expect, it } from 'vitest';
import { worksheetFunction } from '../../src/call/worksheet';
import type { CellValue } from '../../src/cells/value';
import { stackCpk } from '../../src/catalogue/stack/cpk';
import { stackRss } from '../../src/catalogue/stack/rss';
import { stackTrials } from '../../src/catalogue/stack/trials';
import { stackWorst } from '../../src/catalogue/stack/worst';
import { stackYield } from '../../src/catalogue/stack/yield';
import type { Definition } from '../../src/core/define';
import { askNumber } from '../support/ask';

const STACKS = [
  { tolerances: [0.02, 0.015, 0.01, 0.03], sensitivities: [1, 1, 1, 1] },
  { tolerances: [0.05, 0.01, 0.02], sensitivities: [1, -2, 0.5] },
  { tolerances: [0.1], sensitivities: [-1] },
] as const;

/** The row that a stack's function answers for two ranges and further cells. */
const stackRow = (
  definition: Definition,
  { tolerances, sensitivities }: { tolerances: readonly number[]; sensitivities: readonly number[] },
  ...more: readonly CellValue[]
): readonly CellValue[] =>
  worksheetFunction(definition).call([
    tolerances.map((t) => [t]),
    sensitivities.map((s) => [s]),
    ...more.map((cell) => [[cell]]),
    [['mm']],
  ])[0] ?? [];

const trials = (stack: (typeof STACKS)[number], shape: string, n: number, seed: number): number[] =>
  stackRow(stackTrials, stack, shape, n, seed) as number[];

const whole = (definition: Definition, stack: (typeof STACKS)[number]): number =>
  stackRow(definition, stack)[0] as number;

/** Sigma of a sample of n from a nearly normal stack, in parts of sigma. */
const sigmaError = (n: number): number => 1 / Math.sqrt(2 * (n - 1));

describe('trials of a stack', () => {
  it.each(STACKS)('agree with root-sum-square for normal contributors $tolerances', (stack) => {
    const n = 20_000;
    const sigma = whole(stackRss, stack) / 3;
    // Ten seeds: each within four of its own standard errors, and together nearer than that.
    const rows = Array.from({ length: 10 }, (_, seed) => trials(stack, 'normal', n, seed));
    for (const [mean = NaN, spread = NaN, low = NaN, median = NaN, high = NaN] of rows) {
      const error = sigma / Math.sqrt(n);
      expect(Math.abs(mean)).toBeLessThan(4 * error);
      expect(Math.abs(spread / sigma - 1)).toBeLessThan(4 * sigmaError(n));
      expect(Math.abs(median)).toBeLessThan(4 * 1.2533 * error);
      expect(Math.abs(low + 3 * sigma)).toBeLessThan(4 * 8.2846 * error);
      expect(Math.abs(high - 3 * sigma)).toBeLessThan(4 * 8.2846 * error);
    }
    const together = rows.reduce((sum, [, spread = NaN]) => sum + spread, 0) / rows.length;
    expect(Math.abs(together / sigma - 1)).toBeLessThan(3 * sigmaError(10 * n));
  });

  it.each([
    ['uniform', 1 / Math.sqrt(3)],
    ['triangular', 1 / Math.sqrt(6)],
  ] as const)('have the sigma of %s contributors', (shape, factor) => {
    const n = 40_000;
    for (const stack of STACKS) {
      const sigma = factor * whole(stackRss, stack);
      const [mean = NaN, spread = NaN] = trials(stack, shape, n, 5);
      expect(Math.abs(mean)).toBeLessThan((4 * sigma) / Math.sqrt(n));
      // Short tails make sigma surer than for a normal stack, so its error bounds these too.
      expect(Math.abs(spread / sigma - 1)).toBeLessThan(4 * sigmaError(n));
    }
  });

  it('never pass the worst case where contributors keep their limits', () => {
    for (const stack of STACKS) {
      const worst = whole(stackWorst, stack);
      const [, , low = NaN, , high = NaN] = trials(stack, 'uniform', 20_000, 3);
      expect(low).toBeGreaterThanOrEqual(-worst);
      expect(high).toBeLessThanOrEqual(worst);
    }
  });

  it('repeat for a seed and differ for another', () => {
    expect(trials(STACKS[0], 'normal', 1000, 4)).toEqual(trials(STACKS[0], 'normal', 1000, 4));
    expect(trials(STACKS[0], 'normal', 1000, 4)).not.toEqual(trials(STACKS[0], 'normal', 1000, 5));
  });

  it('refuse sensitivities that do not pair with the tolerances', () => {
    const [cell] = stackRow(stackRss, { tolerances: [0.1, 0.2, 0.3], sensitivities: [1, 1] });
    expect(String((cell as { message?: string }).message)).toBe(
      'sensitivities has 2 entries, but tolerances has 3; give one for each, without blank cells.',
    );
  });
});

describe('the fraction of a normal population', () => {
  // jstat's normal distribution, a general-purpose statistics package.
  it.each([
    [0, 1, -1, 1],
    [0.3, 0.7, -2, 1.1],
    [5, 0.25, 4.9, 4.95],
    [0, 1, -6, 6],
    [-2, 1, 1, 3],
  ] as const)('agrees with jstat for mean %s, sigma %s between %s and %s', (mean, sigma, lower, upper) => {
    const expected = jstat.normal.cdf(upper, mean, sigma) - jstat.normal.cdf(lower, mean, sigma);
    expect(Math.abs(askNumber(stackYield, mean, sigma, lower, upper, 'mm') - expected)).toBeLessThan(1e-13);
  });

  it('agrees with the trials of a normal stack', () => {
    const [mean = NaN, sigma = NaN, low = NaN, , high = NaN] = trials(STACKS[0], 'normal', 100_000, 8);
    const inside = askNumber(stackYield, mean, sigma, low, high, 'mm');
    // Between the 0.135 and 99.865 percentiles; their error is √(p/n) each.
    expect(Math.abs(inside - 0.9973)).toBeLessThan(4 * Math.sqrt((2 * 0.00135) / 100_000));
  });

  it('is 99.73 % at a Cpk of one', () => {
    const limits = [10, 0.01, 9.97, 10.03] as const;
    expect(askNumber(stackCpk, ...limits, 'mm')).toBeCloseTo(1, 10);
    expect(askNumber(stackYield, ...limits, 'mm')).toBeCloseTo(0.9973002039, 9);
  });
});
