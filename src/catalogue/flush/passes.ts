import { derived, formula, input } from '../../core/define';

export const flushPasses = formula({
  name: 'FLUSH.PASSES',
  summary: 'Number of passes that take the stock off: one finish pass, the rest at most the rough depth.',
  inputs: [
    input('stock', 's', 'length', {
      min: '0 mm',
      usual: ['0 mm', '10 mm'],
      says: 'Stock left on the face, from FLUSH.STOCK',
    }),
    input('roughDepth', 'a_r', 'length', {
      above: '0 mm',
      usual: ['0.01 mm', '5 mm'],
      says: 'Deepest roughing cut',
    }),
    input('finishDepth', 'a_f', 'length', {
      above: '0 mm',
      usual: ['0.005 mm', '1 mm'],
      says: 'Depth of the finish cut',
    }),
  ],
  steps: {
    q: {
      gives: 'ratio',
      expr: 'max(0, s - a_f)/a_r',
      says: 'What the finish cut leaves to roughing, in rough depths',
    },
    n: {
      gives: 'count',
      expr: 's > 0 ? 1 + ceil(q - 1e-9) : 0',
      says: 'Whole passes; a billionth of a pass is rounding, not stock',
    },
  },
  result: 'n',
  valid: [
    { holds: 'a_f <= a_r', says: 'The finish cut is deeper than the rough cuts: it is no finish cut.' },
  ],
  sources: [derived('Stock less the finish cut, divided into equal cuts no deeper than the rough depth')],
  notes: ['Divide what roughing takes evenly over its passes instead of leaving a thin last one.'],
  cautions: [
    {
      says: 'Touch off on the plate, not on the insert, and check for parallel before the finish pass: the last cut goes to the plate’s own height.',
    },
  ],
  related: ['FLUSH.STOCK', 'CUT.TIME'],
});
