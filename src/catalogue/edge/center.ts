import { choice, derived, formula, input } from '../../core/define';
import { ANY_ZERO } from './inputs';

export const edgeCenter = formula({
  name: 'EDGE.CENTER',
  aliases: ['EDGE.CENTRE'],
  summary: 'Position of an edge from one touch with an edge finder or probe.',
  inputs: [
    input('reading', 'x_t', 'length', {
      noUsual: ANY_ZERO,
      says: 'Reading of the spindle’s axis at the touch',
    }),
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
});
