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
      says: 'Specific heat of its metal: about 0.46 for steel, 0.9 for aluminium',
    }),
  ],
  steps: {
    r: { gives: 'rise', expr: 'm*h/(M*c)', says: 'Heat of the shot over the heat capacity of the mold' },
  },
  result: 'r',
  sources: [derived('The heat that the shot gives up stays in the mold'), HEAT_CONTENTS],
  notes: HEAT_NOTES,
  related: ['COOL.MOLDTEMP', 'METAL.VALUE'],
  checks: [
    {
      given: { shotMass: '10 g', heatContent: '480 J/g', moldMass: '1500 g', specificHeat: '0.896 J/(g·K)' },
      expect: '3.57142857143 °C',
      within: 1e-9,
      from: 'by hand: 4800/(1500 × 0.896)',
    },
    {
      given: { shotMass: '0.5 oz', heatContent: '400 J/g', moldMass: '50 oz', specificHeat: '0.46 J/(g·K)' },
      expect: '15.652173913 °F',
      within: 1e-9,
      from: 'by hand: 1.8 × 200/23',
    },
    {
      given: { shotMass: '1 g', heatContent: '1 J/g', moldMass: '1 g', specificHeat: '1 J/(g·K)' },
      expect: '1 °C',
      within: 1e-12,
      from: 'unit heat in unit heat capacity',
      limit: true,
    },
  ],
});
