import { choice, derived, formula, input } from '../../core/define';

export const edgeCentre = formula({
  name: 'EDGE.CENTRE',
  summary: 'Position of an edge from one touch with an edge finder or probe.',
  inputs: [
    input('reading', 'x_t', 'length', { says: 'Reading of the spindle’s axis at the touch' }),
    input('tipDia', 'd', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '15 mm'],
      says: 'Diameter of the tip',
    }),
    choice('side', ['left', 'right', 'front', 'back'], {
      says: 'Face of the work that is touched, as one stands before the machine',
    }),
  ],
  steps: {
    x: {
      gives: 'length',
      by: 'side',
      cases: { left: 'x_t + d/2', front: 'x_t + d/2', right: 'x_t - d/2', back: 'x_t - d/2' },
      says: 'Half the tip further on, into the work',
    },
  },
  result: 'x',
  sources: [derived('The axis of the spindle stands half the tip off the edge')],
  notes: [
    'X grows to the right and Y to the back: at the left and front faces the tip stands on the low side of the edge, at the right and back ' +
      'on the high side. On the faces of a pocket it is the other way about.',
    'A tip that runs out puts its runout into the edge; two opposite touches and EDGE.MIDDLE do not mind the tip’s size.',
  ],
  cautions: [
    {
      says: 'Let the spindle stop or turn slowly as the finder’s maker says: a tip flung off at speed hurts.',
    },
  ],
  related: ['EDGE.MIDDLE'],
  checks: [
    {
      given: { reading: '10.5 mm', tipDia: '6 mm', side: 'left' },
      expect: '13.5 mm',
      within: 1e-12,
      from: 'by hand: 10.5 + 3',
    },
    {
      given: { reading: '1.234 in', tipDia: '0.2 in', side: 'right' },
      expect: '1.134 in',
      within: 1e-12,
      from: 'by hand: 1.234 − 0.1',
    },
    {
      given: { reading: '-0.1 in', tipDia: '0.2 in', side: 'front' },
      expect: '0 in',
      from: 'read half the tip before zero, the edge is at zero',
      limit: true,
    },
    {
      given: { reading: '0.1 in', tipDia: '0.2 in', side: 'back' },
      expect: '0 in',
      from: 'read half the tip beyond zero, the edge is at zero',
      limit: true,
    },
  ],
});
