import { derived, formula } from '../../core/define';
import { limitsInOrder, lower, mean, sigma, upper } from './inputs';

export const stackCpk = formula({
  name: 'STACK.CPK',
  summary: 'Capability index Cpk of a population between two limits.',
  inputs: [mean, sigma, lower, upper],
  refuse: [limitsInOrder],
  steps: {
    C_u: { gives: 'ratio', expr: '(USL - m)/(3*sigma)', says: 'Room to the upper limit, in three sigmas' },
    C_l: { gives: 'ratio', expr: '(m - LSL)/(3*sigma)', says: 'Room to the lower limit, in three sigmas' },
    C_pk: { gives: 'ratio', expr: 'min(C_u, C_l)', says: 'The tighter side' },
  },
  result: 'C_pk',
  sources: [derived('Definition of the index: min(USL − m, m − LSL)/(3 σ)')],
  notes: [
    'Assumes a normal population that stays as it is. 1 means three sigma to the nearer limit, 1.33 four; below 0 the mean itself lies outside.',
    'From few parts it is uncertain: 30 parts give it to about ± 25 %.',
  ],
  related: ['STACK.YIELD', 'STACK.TRIALS'],
  checks: [
    {
      given: { mean: '0.005 mm', sigma: '0.01 mm', lower: '-0.025 mm', upper: '0.025 mm' },
      expect: 0.666666667,
      within: 1e-8,
      from: 'by hand: the upper limit is 2 sigma away, 2/3',
    },
    {
      given: { mean: '1 in', sigma: '0.00025 in', lower: '0.999 in', upper: '1.001 in' },
      expect: 1.33333333,
      within: 1e-8,
      from: 'by hand: four sigma each way, 4/3',
    },
    {
      given: { mean: '0.03 mm', sigma: '0.01 mm', lower: '-0.025 mm', upper: '0.025 mm' },
      expect: -0.166666667,
      within: 1e-8,
      from: 'by hand: the mean is half a sigma beyond the limit',
    },
    {
      given: { mean: '0.025 mm', sigma: '0.01 mm', lower: '-0.025 mm', upper: '0.025 mm' },
      expect: 0,
      from: 'a mean at its limit has no room',
      limit: true,
    },
  ],
});
