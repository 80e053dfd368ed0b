import { formula, fromMemory, input } from '../../core/define';

const offset = { usual: ['-1 mm', '1 mm'] } as const;

export const fitPosition = formula({
  name: 'FIT.POSITION',
  summary: 'Position error of a hole or pin as a diameter, from how far it is off in two directions.',
  inputs: [
    input('dx', 'x', 'length', { ...offset, says: 'Off true position one way' }),
    input('dy', 'y', 'length', { ...offset, says: 'Off true position square to it' }),
  ],
  steps: {
    T: {
      gives: 'length',
      expr: '2*sqrt(x^2 + y^2)',
      says: 'Diameter of the zone about true position that the axis just reaches',
    },
  },
  result: 'T',
  sources: [fromMemory('ASME Y14.5: a position tolerance is the diameter of its zone')],
  notes: [
    'Compare it with the position tolerance of the drawing, with its bonus where the material condition gives one.',
  ],
  related: ['FIT.CLEARHOLE', 'STACK.RSS', 'FIT.GAP'],
});
