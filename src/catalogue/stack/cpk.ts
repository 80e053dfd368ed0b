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
});
