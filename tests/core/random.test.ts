import { mersenne } from 'pure-rand/generator/mersenne';
import { describe, expect, it } from 'vitest';
import { seededDeviates, SPREADS, summarize } from '../../src/core/random';

const take = (n: number, draw: () => number): number[] => Array.from({ length: n }, () => draw());

describe('seeded chance', () => {
  it('is the Mersenne Twister of the C++ standard', () => {
    // ISO/IEC 14882 [rand.predef]: the 10 000th number of mt19937 from its default seed 5489 is 4 123 659 995.
    const generator = mersenne(5489);
    const drawn = take(10_000, () => generator.next());
    expect((drawn.at(-1) as number) >>> 0).toBe(4_123_659_995);
  });

  // Worked out apart from this program, with Python's own Mersenne Twister set to the state that the seed gives.
  it.each([
    ['uniform', [0.37881582706909955, -0.7984653460432423, -0.985359218717148]],
    ['triangular', [-0.20982475948707136, -0.6433952589440521, 0.3020472563122284]],
    ['normal', [-0.6351620054559414 / 3, 0.30133984099872224 / 3, 0.7878520350799272 / 3]],
  ] as const)('gives the same %s deviates for a seed for ever', (spread, expected) => {
    const drawn = take(3, seededDeviates(1)(spread, 1));
    drawn.forEach((x, i) => {
      expect(x).toBeCloseTo(expected[i] as number, 14);
    });
  });

  it('differs from seed to seed from the first number on', () => {
    const firsts = take(100, () => 0).map((_, seed) => seededDeviates(seed)('uniform', 1)());
    expect(new Set(firsts).size).toBe(100);
    expect(Math.abs(firsts.reduce((a, b) => a + b) / 100)).toBeLessThan((4 * 1) / Math.sqrt(3 * 100));
  });

  it.each(SPREADS)('keeps the sigma of a %s spread within four standard errors', (spread) => {
    const sigma = { normal: 1 / 3, uniform: 1 / Math.sqrt(3), triangular: 1 / Math.sqrt(6) }[spread];
    const n = 50_000;
    const drawn = Float64Array.from(take(n, seededDeviates(11)(spread, 1)));
    const summary = summarize(drawn);
    expect(Math.abs(summary.mean)).toBeLessThan(4 * summary.standardError);
    expect(Math.abs(summary.sigma / sigma - 1)).toBeLessThan(4 / Math.sqrt(2 * n));
    if (spread !== 'normal') expect(Math.max(...drawn.map(Math.abs))).toBeLessThanOrEqual(1);
  });
});

describe('the summary of trials', () => {
  it('has the mean and sigma of the sample, and interpolates percentiles', () => {
    // By hand: 1, 2, 4, 9 has mean 4 and variance (9 + 4 + 0 + 25)/3; its median lies midway between 2 and 4.
    const summary = summarize(Float64Array.from([9, 1, 4, 2]));
    expect(summary.mean).toBe(4);
    expect(summary.sigma).toBeCloseTo(Math.sqrt(38 / 3), 14);
    expect(summary.median).toBe(3);
    expect(summary.low).toBeCloseTo(1 + 3 * 0.00135, 14);
    expect(summary.high).toBeCloseTo(9 - 3 * 0.00135 * 5, 14);
    expect(summary.standardError).toBeCloseTo(Math.sqrt(38 / 3) / 2, 14);
  });
});
