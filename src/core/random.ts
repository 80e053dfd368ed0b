import { deviation, mean, quantileSorted } from 'd3-array';
import { randomNormal, randomUniform } from 'd3-random';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';

/**
 * Seeded chance for trials. A seed must give the same numbers for ever, as worksheets are compared years later:
 * the generator is the Mersenne Twister MT19937 (ISO/IEC 14882, [rand.predef]), two of its words make one number of
 * 53 bits, normal deviates come by Marsaglia's polar method. The packages are pinned and the tests hold all three.
 */

/** How a contributor spreads between its limits; normal takes them as three sigma. */
export const SPREADS = ['normal', 'uniform', 'triangular'] as const;
export type Spread = (typeof SPREADS)[number];

/** A source of deviates about 0 with limits ± `limit`. */
type Deviates = (spread: Spread, limit: number) => () => number;

export function seededDeviates(seed: number): Deviates {
  const generator = mersenne(seed);
  const unit = (): number => uniformFloat64(generator);
  const normal = randomNormal.source(unit);
  const uniform = randomUniform.source(unit);
  return (spread, limit) => {
    switch (spread) {
      case 'normal':
        return normal(0, limit / 3);
      case 'uniform':
        return uniform(-limit, limit);
      case 'triangular': {
        // The sum of two even spreads of half the width.
        const halfWide = uniform(-limit / 2, limit / 2);
        return () => halfWide() + halfWide();
      }
    }
  };
}

/** What trials are summed up by: mean, sigma, and the percentiles that a normal spread has at −3, 0 and +3 sigma. */
export interface Summary {
  readonly mean: number;
  readonly sigma: number;
  readonly low: number;
  readonly median: number;
  readonly high: number;
  /** Of the mean. */
  readonly standardError: number;
}

/** Percentiles of a normal spread at ∓ 3 sigma. */
const AT_LOW = 0.00135;
const AT_HIGH = 0.99865;

/** Sums up at least two trials; sorts them. */
export function summarize(trials: Float64Array): Summary {
  trials.sort();
  // Reads any list by its places; a million numbers need not be copied for it.
  const sorted = trials as ArrayLike<number> as number[];
  const at = (p: number): number => quantileSorted(sorted, p) ?? NaN;
  const sigma = deviation(trials) ?? NaN;
  return {
    mean: mean(trials) ?? NaN,
    sigma,
    low: at(AT_LOW),
    median: at(0.5),
    high: at(AT_HIGH),
    standardError: sigma / Math.sqrt(trials.length),
  };
}
