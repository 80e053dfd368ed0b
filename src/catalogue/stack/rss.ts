import { derived, procedure } from '../../core/define';
import {
  CENTRED,
  contributions,
  nativeOneEach,
  nativeRootSumSquare,
  rootSumSquare,
  sensitivities,
  tolerances,
} from './inputs';

export const stackRss = procedure({
  name: 'STACK.RSS',
  summary: 'Root-sum-square of a tolerance stack, ±: three sigma of many alike.',
  inputs: [tolerances, sensitivities],
  gives: 'length',
  method: 'The square root of the summed squares of what each contributor can move the stack.',
  steps: { T: { gives: 'length', says: 'Root-sum-square ±', equation: 'T = √(sum of (s_i t_i)²)' } },
  run: (x, show) => {
    const rss = rootSumSquare(contributions(x.tolerances, x.sensitivities));
    show('T', rss);
    return rss;
  },
  native: (x, write) => {
    nativeOneEach(write, x.tolerances, x.sensitivities, 'sensitivities');
    return nativeRootSumSquare(x.tolerances, x.sensitivities);
  },
  sources: [derived('Variances of independent contributors add')],
  notes: [
    CENTRED,
    'Of many stacks 99.73 % stay within it then. Contributors that spread evenly to their limits make it too small by up to √3; mean shifts add to it in full. Where that is not known, take STACK.BENDER, or try it with STACK.TRIALS.',
  ],
  related: ['STACK.BENDER', 'STACK.WORST', 'STACK.TRIALS', 'STACK.YIELD'],
});
