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
});
