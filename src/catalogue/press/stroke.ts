import { derived, formula, input } from '../../core/define';
import { MELT_CAUTION, plungerDia } from './inputs';

export const pressStroke = formula({
  name: 'PRESS.STROKE',
  summary: 'Plunger stroke that a shot takes, with a cushion left.',
  inputs: [
    input('shotVolume', 'V', 'volume', {
      min: '0 cm³',
      usual: ['0.05 cm³', '500 cm³'],
      says: 'Volume of melt in the shot, runner and sprue included',
    }),
    plungerDia,
    input('cushion', 'c', 'length', {
      usual: ['0 mm', '30 mm'],
      min: '0 mm',
      default: '0 mm',
      says: 'Stroke that stays in front of the plunger to hold pressure',
    }),
  ],
  steps: {
    s: { gives: 'length', expr: 'V/(pi*d^2/4) + c', says: 'Volume over the plunger’s area, and the cushion' },
  },
  result: 's',
  sources: [derived('Volume of a cylinder')],
  notes: ['The volume is that of the melt: PRESS.MELTVOLUME gives it from the volume of the cold part.'],
  cautions: [{ says: MELT_CAUTION }],
  related: ['PRESS.SHOT', 'PRESS.MELTVOLUME'],
});
