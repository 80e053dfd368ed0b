import { constantSI } from '../../core/constants';
import { choice, constant, derived, input, procedure } from '../../core/define';
import { seededDeviates, SPREADS, summarize } from '../../core/random';
import { contributions, sensitivities, tolerances } from './inputs';

const LARGEST_SEED = 2 ** 31 - 1;
const c_p = constant(
  'ratio',
  8.2846,
  'Error of a percentile in units of sigma/√n: √(p (1 − p))/f(3) for the normal density f and p below −3 sigma',
);
const PERCENTILE_ERROR = constantSI(c_p);

export const stackTrials = procedure({
  name: 'STACK.TRIALS',
  summary:
    'Seeded trials of a tolerance stack: one row of mean, sigma, and the 0.135, 50 and 99.865 percentiles.',
  inputs: [
    tolerances,
    sensitivities,
    choice('shape', SPREADS, {
      default: 'normal',
      says: 'How each contributor spreads: normal (tolerance at three sigma), or between its limits uniform or triangular',
    }),
    input('trials', 'n', 'count', {
      min: 100,
      max: 200_000,
      default: 10_000,
      usual: [1000, 100_000],
      says: 'Number of trials',
    }),
    input('seed', 'seed', 'count', {
      noUsual: 'Any number starts a series as well as another',
      min: 0,
      max: LARGEST_SEED,
      default: 1,
      says: 'Start of the random series: the same seed gives the same row, another seed another sample',
    }),
  ],
  gives: {
    row: [
      { gives: 'length', says: 'Mean' },
      { gives: 'length', says: 'Sigma' },
      { gives: 'length', says: '0.135 %' },
      { gives: 'length', says: '50 %' },
      { gives: 'length', says: '99.865 %' },
    ],
  },
  method:
    'Draws every contributor by chance, adds them up, and repeats. Mersenne Twister MT19937 from the seed; normal deviates by the polar method; percentiles by interpolation between the sorted trials.',
  constants: { c_p },
  steps: {
    m: { gives: 'length', says: 'Mean of the stack about nominal', equation: 'm = mean of the trials' },
    sigma: {
      gives: 'length',
      says: 'Standard deviation',
      equation: 'sigma = √(sum of (x − m)²/(n − 1))',
    },
    SE_m: { gives: 'length', says: 'Standard error of the mean', equation: 'SE_m = sigma/√n' },
    SE_sigma: {
      gives: 'length',
      says: 'Standard error of sigma, for a nearly normal stack',
      equation: 'SE_sigma = sigma/√(2 (n − 1))',
    },
    SE_p: {
      gives: 'length',
      says: 'Standard error of the outer percentiles, for a nearly normal stack',
      equation: 'SE_p = c_p sigma/√n',
    },
  },
  run: ({ tolerances: own, sensitivities: factors, shape, trials, seed }, show) => {
    const deviates = seededDeviates(seed);
    const draws = contributions(own, factors).map((limit) => deviates(shape, limit));
    const stacks = new Float64Array(trials);
    for (const draw of draws) {
      for (let i = 0; i < trials; i++) stacks[i] = (stacks[i] as number) + draw();
    }
    const { mean, sigma, low, median, high, standardError } = summarize(stacks);
    show('m', mean);
    show('sigma', sigma);
    show('SE_m', standardError);
    show('SE_sigma', sigma / Math.sqrt(2 * (trials - 1)));
    show('SE_p', PERCENTILE_ERROR * standardError);
    return [mean, sigma, low, median, high];
  },
  valid: [
    {
      holds: ({ trials }) => trials >= 2000,
      says: 'With fewer than about 2000 trials hardly any falls outside the outer percentiles: they mean little.',
    },
  ],
  sources: [
    derived('Monte Carlo of the linear stack: sum of s_i times a deviate of t_i'),
    derived('Standard errors of mean, sigma and percentile of a sample'),
  ],
  notes: [
    'Assumes contributors that are independent and centered between their limits. Between percentiles 0.135 and 99.865 lie 99.73 % of the stacks, as within ± 3 sigma of a normal one.',
    'For normal contributors sigma is STACK.RSS/3 within its standard error; ten thousand trials give it to 0.7 %, and the outer percentiles to about 3 %.',
  ],
  related: ['STACK.RSS', 'STACK.WORST', 'STACK.YIELD', 'TRY.SPREAD'],
});
