import { derived, procedure } from '../../core/define';
import { contributions, nativeOneEach, nativeSum, sensitivities, tolerances } from './inputs';

export const stackWorst = procedure({
  name: 'STACK.WORST',
  summary: 'Worst case of a tolerance stack, ±: every contributor at its limit at once.',
  inputs: [tolerances, sensitivities],
  gives: 'length',
  method: 'Adds what each contributor can move the stack, whatever its sign.',
  steps: { T: { gives: 'length', says: 'Worst case ±', equation: 'T = sum of |s_i| t_i' } },
  run: (x, show) => {
    const worst = contributions(x.tolerances, x.sensitivities).reduce((a, b) => a + b, 0);
    show('T', worst);
    return worst;
  },
  native: (x, write) => {
    nativeOneEach(write, x.tolerances, x.sensitivities, 'sensitivities');
    return nativeSum(x.tolerances, x.sensitivities);
  },
  sources: [derived('Linear stack with every contributor at the limit that hurts')],
  notes: [
    'Assumes nothing about how the parts spread, so it is certain, and dear with many contributors. For one mold it is the right stack.',
  ],
  related: ['STACK.RSS', 'STACK.BENDER', 'STACK.TRIALS', 'FLUSH.STOCK'],
});
