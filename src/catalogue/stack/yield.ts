import { derived, formula } from '../../core/define';
import { limitsInOrder, lower, mean, sigma, upper } from './inputs';

export const stackYield = formula({
  name: 'STACK.YIELD',
  summary: 'Fraction of a normal population that lies between two limits.',
  inputs: [mean, sigma, lower, upper],
  refuse: [limitsInOrder],
  steps: {
    z_u: { gives: 'ratio', expr: '(USL - m)/sigma', says: 'Upper limit in sigmas from the mean' },
    z_l: { gives: 'ratio', expr: '(LSL - m)/sigma', says: 'Lower limit in sigmas from the mean' },
    Y: {
      gives: 'ratio',
      expr: '(erf(z_u/sqrt(2)) - erf(z_l/sqrt(2)))/2',
      says: 'Area of the normal curve between them',
    },
  },
  result: 'Y',
  sources: [derived('Normal distribution, Φ(z) = (1 + erf(z/√2))/2')],
  notes: [
    'Assumes a normal population that stays as it is. Beyond about four sigma no shop’s parts are normal: parts per million from it are a guess.',
    'Sigma is a third of STACK.RSS, or the second value of STACK.TRIALS.',
  ],
  related: ['STACK.CPK', 'STACK.RSS', 'STACK.TRIALS'],
  checks: [
    {
      given: { mean: '0 mm', sigma: '0.01 mm', lower: '-0.025 mm', upper: '0.025 mm' },
      expect: 0.98758067,
      within: 1e-8,
      from: 'table of the normal curve: Φ(2.5) = 0.99379033, so 2 × 0.99379033 − 1',
    },
    {
      given: { mean: '0.005 mm', sigma: '0.01 mm', lower: '-0.025 mm', upper: '0.025 mm' },
      expect: 0.97589997,
      within: 1e-8,
      from: 'table of the normal curve: Φ(2) − Φ(−3) = 0.97724987 − 0.00134990',
    },
    {
      given: { mean: '1 in', sigma: '0.001 in', lower: '0.997 in', upper: '1.003 in' },
      expect: 0.9973002,
      within: 1e-7,
      from: 'three sigma each way: 0.9973002 of the normal curve',
    },
    {
      given: { mean: '0 mm', sigma: '0.01 mm', lower: '-1 mm', upper: '0 mm' },
      expect: 0.5,
      within: 1e-12,
      from: 'half lies below the mean',
      limit: true,
    },
  ],
});
