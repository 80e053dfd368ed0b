import { derived, formula, input } from '../../core/define';
import { NO_USUAL_MONEY } from './inputs';

export const costBreakEven = formula({
  name: 'COST.BREAKEVEN',
  summary: 'Quantity at which two molds, or two ways of making a part, cost the same.',
  inputs: [
    input('moldCostA', 'M_A', 'money', { noUsual: NO_USUAL_MONEY, min: 0, says: 'Cost of mold A' }),
    input('partCostA', 'c_A', 'money', {
      noUsual: NO_USUAL_MONEY,
      min: 0,
      says: 'Cost of a part from A, without the mold',
    }),
    input('moldCostB', 'M_B', 'money', { noUsual: NO_USUAL_MONEY, min: 0, says: 'Cost of mold B' }),
    input('partCostB', 'c_B', 'money', {
      noUsual: NO_USUAL_MONEY,
      min: 0,
      says: 'Cost of a part from B, without the mold',
    }),
  ],
  inWords: {
    when: '(M_B - M_A)*(c_A - c_B) < 0 or (c_A <= c_B and c_A >= c_B)',
    says: 'never',
  },
  steps: {
    N: {
      gives: 'ratio',
      expr: '(M_B - M_A)/(c_A - c_B)',
      says: 'What one saves a part pays off what its mold costs more: M_A + N c_A = M_B + N c_B',
    },
  },
  result: 'N',
  sources: [derived('Equal total cost of both')],
  notes: [
    'Below this quantity the cheaper mold wins, above it the cheaper part. It answers "never" where one of the two wins at every quantity, ' +
      'or where the parts cost the same. For partCost take COST.PART with a moldCost of 0.',
  ],
  cautions: [
    { when: 'M_A <= M_B and c_A <= c_B', says: 'B is at no quantity cheaper than A.' },
    { when: 'M_B <= M_A and c_B <= c_A', says: 'A is at no quantity cheaper than B.' },
  ],
  related: ['COST.PART', 'COST.CYCLE'],
});
