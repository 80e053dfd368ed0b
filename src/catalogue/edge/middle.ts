import { derived, formula, input } from '../../core/define';
import { ANY_ZERO } from './inputs';

export const edgeMiddle = formula({
  name: 'EDGE.MIDDLE',
  summary: 'Middle of a hole, slot or boss from two opposite touches.',
  inputs: [
    input('reading1', 'x_1', 'length', { noUsual: ANY_ZERO, says: 'Reading at the first touch' }),
    input('reading2', 'x_2', 'length', {
      noUsual: ANY_ZERO,
      says: 'Reading at the opposite touch, on the same axis',
    }),
  ],
  steps: { x: { gives: 'length', expr: '(x_1 + x_2)/2', says: 'Half way: the size of the tip drops out' } },
  result: 'x',
  sources: [derived('Symmetry of two touches with the same tip')],
  notes: [
    'Touch both sides with the tip turned the same way: its size drops out, its runout only then. In a round hole touch on a line through ' +
      'the middle: find the middle of the other axis first, then touch this one again.',
  ],
  related: ['EDGE.CENTER'],
});
