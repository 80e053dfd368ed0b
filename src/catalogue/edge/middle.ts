import { derived, formula, input } from '../../core/define';

export const edgeMiddle = formula({
  name: 'EDGE.MIDDLE',
  summary: 'Middle of a hole, slot or boss from two opposite touches.',
  inputs: [
    input('reading1', 'x_1', 'length', { says: 'Reading at the first touch' }),
    input('reading2', 'x_2', 'length', { says: 'Reading at the opposite touch, on the same axis' }),
  ],
  steps: { x: { gives: 'length', expr: '(x_1 + x_2)/2', says: 'Half way: the size of the tip drops out' } },
  result: 'x',
  sources: [derived('Symmetry of two touches with the same tip')],
  notes: [
    'Touch both sides with the tip turned the same way: its size drops out, its runout only then. In a round hole touch on a line through ' +
      'the middle: find the middle of the other axis first, then touch this one again.',
  ],
  related: ['EDGE.CENTRE'],
  checks: [
    {
      given: { reading1: '-12.35 mm', reading2: '37.65 mm' },
      expect: '12.65 mm',
      within: 1e-12,
      from: 'by hand: (37.65 − 12.35)/2',
    },
    {
      given: { reading1: '0.4375 in', reading2: '1.3125 in' },
      expect: '0.875 in',
      within: 1e-12,
      from: 'by hand: 7/16 and 21/16 have 14/16 between them',
    },
    {
      given: { reading1: '-0.75 in', reading2: '0.75 in' },
      expect: '0 in',
      from: 'touches that lie even about zero have their middle there',
      limit: true,
    },
  ],
});
