import { derived, formula, input } from '../../core/define';
import { HEAT_CONTENTS, HEAT_NOTES, heatContent, shotMass } from './balance';

export const coolRise = formula({
  name: 'COOL.RISE',
  summary: 'Rise of a mold’s temperature with one shot.',
  inputs: [
    shotMass,
    heatContent,
    input('moldMass', 'M', 'mass', {
      above: '0 g',
      usual: ['50 g', '200 kg'],
      says: 'Mass of the mold that takes the heat',
    }),
    input('specificHeat', 'c', 'specificHeat', {
      above: '0 J/(g·K)',
      usual: ['0.1 J/(g·K)', '2 J/(g·K)'],
      says: 'Specific heat of its metal: about 0.46 for steel, 0.9 for aluminum',
    }),
  ],
  steps: {
    r: { gives: 'rise', expr: 'm*h/(M*c)', says: 'Heat of the shot over the heat capacity of the mold' },
  },
  result: 'r',
  sources: [derived('The heat that the shot gives up stays in the mold'), HEAT_CONTENTS],
  notes: HEAT_NOTES,
  related: ['COOL.MOLDTEMP', 'METAL.VALUE'],
});
