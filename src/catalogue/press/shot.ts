import { commonPractice, derived, formula, input } from '../../core/define';
import { MELT_CAUTION, plungerDia } from './inputs';

export const pressShot = formula({
  name: 'PRESS.SHOT',
  summary: 'Usable shot volume of a plunger and its stroke.',
  inputs: [
    plungerDia,
    input('stroke', 's', 'length', {
      above: '0 mm',
      usual: ['5 mm', '500 mm'],
      says: 'Full stroke of the plunger',
    }),
    input('usable', 'u', 'ratio', {
      usual: [0.3, 1],
      above: 0,
      max: 1,
      default: 0.7,
      says: 'Share of the stroke that melts well',
    }),
  ],
  steps: {
    V_s: { gives: 'volume', expr: 'pi*d^2/4*s', says: 'Volume swept' },
    V: { gives: 'volume', expr: 'u*V_s', says: 'What of it may be used' },
  },
  result: 'V',
  sources: [
    derived('Volume of a cylinder'),
    commonPractice('Use at most 0.7 of the barrel’s volume for a shot'),
  ],
  cautions: [{ says: MELT_CAUTION }],
  related: ['PRESS.STROKE', 'PRESS.MELTVOLUME'],
});
