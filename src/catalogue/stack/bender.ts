import { constantSI } from '../../core/constants';
import { commonPractice, constant, derived, procedure } from '../../core/define';
import {
  contributions,
  nativeOneEach,
  nativeRootSumSquare,
  rootSumSquare,
  sensitivities,
  tolerances,
} from './inputs';

const f = constant('ratio', 1.5, 'By what the root-sum-square is widened');
const INFLATION = constantSI(f);

export const stackBender = procedure({
  name: 'STACK.BENDER',
  summary: 'Bender’s stack of tolerances, ±: root-sum-square times 1.5.',
  inputs: [tolerances, sensitivities],
  gives: 'length',
  method: 'The root-sum-square of the contributors, widened by 1.5.',
  constants: { f },
  steps: {
    T_r: { gives: 'length', says: 'Root-sum-square ±', equation: 'T_r = √(sum of (s_i t_i)²)' },
    T: { gives: 'length', says: 'Widened', equation: 'T = f T_r' },
  },
  run: (x, show) => {
    const rss = rootSumSquare(contributions(x.tolerances, x.sensitivities));
    show('T_r', rss);
    show('T', INFLATION * rss);
    return INFLATION * rss;
  },
  native: (x, write) => {
    nativeOneEach(write, x.tolerances, x.sensitivities, 'sensitivities');
    return `${INFLATION}*${nativeRootSumSquare(x.tolerances, x.sensitivities)}`;
  },
  valid: [
    {
      holds: (x, answer) =>
        (answer as number) <= contributions(x.tolerances, x.sensitivities).reduce((a, b) => a + b, 0),
      says: 'With so few contributors the widened stack passes the worst case: take STACK.WORST.',
    },
  ],
  sources: [
    derived('Root-sum-square of independent contributors'),
    commonPractice(
      'The factor 1.5 after A. Bender for contributors that are neither centered nor quite normal',
    ),
  ],
  notes: [
    'Assumes independent contributors whose means wander a little within their limits, as in most shops. It is a rule of thumb and no bound.',
  ],
  related: ['STACK.RSS', 'STACK.WORST', 'STACK.TRIALS'],
});
