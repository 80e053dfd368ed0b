import { derived, procedure } from '../../core/define';
import {
  CENTRED,
  contributions,
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
  native: (x) => nativeRootSumSquare(x.tolerances, x.sensitivities),
  sources: [derived('Variances of independent contributors add')],
  notes: [
    CENTRED,
    'Of many stacks 99.73 % stay within it then. Contributors that spread evenly to their limits make it too small by up to √3; mean shifts add to it in full. Where that is not known, take STACK.BENDER, or try it with STACK.TRIALS.',
  ],
  related: ['STACK.BENDER', 'STACK.WORST', 'STACK.TRIALS', 'STACK.YIELD'],
  checks: [
    {
      given: { tolerances: ['0.02 mm', '0.015 mm', '0.01 mm', '0.03 mm'] },
      expect: '0.0403112887 mm',
      within: 1e-8,
      from: 'by hand: √(0.0004 + 0.000225 + 0.0001 + 0.0009) = √0.001625',
    },
    {
      given: { tolerances: ['0.001 in', '0.002 in', '0.0005 in'], sensitivities: [1, -1, 0.5] },
      expect: '0.00225 in',
      within: 1e-9,
      from: 'by hand: √(1 + 4 + 0.0625) = √5.0625 = 2.25 thousandths',
    },
    {
      given: { tolerances: ['0.02 mm', '0 mm'] },
      expect: '0.02 mm',
      within: 1e-12,
      from: 'one contributor is its own stack',
      limit: true,
    },
    {
      given: { tolerances: ['0.01 mm', '0.01 mm', '0.01 mm', '0.01 mm'] },
      expect: '0.02 mm',
      within: 1e-12,
      from: 'four alike make twice one: √4',
      limit: true,
    },
  ],
});
