import { formula, input } from '../../core/define';
import {
  airTemp,
  area,
  FILM,
  film,
  HEAT_CONTENTS,
  HEAT_NOTES,
  heatContent,
  HOT_MOLD,
  LUMP,
  shotMass,
} from './balance';

export const coolMoldTemp = formula({
  name: 'COOL.MOLDTEMP',
  summary: 'Temperature at which an uncooled mold settles.',
  inputs: [
    shotMass,
    heatContent,
    input('cycle', 't', 'time', { above: '0 s', usual: ['5 s', '1800 s'], says: 'Cycle time' }),
    area,
    film,
    airTemp,
  ],
  steps: {
    P: { gives: 'power', expr: 'm*h/t', says: 'Heat that the shots bring' },
    r: { gives: 'rise', expr: 'P/(alpha*A)', says: 'Rise over the air at which the surface gives it away' },
    T: { gives: 'temperature', expr: 'T_a + r', says: 'Above the air' },
  },
  result: 'T',
  sources: [LUMP, FILM, HEAT_CONTENTS],
  notes: [...HEAT_NOTES, 'It takes many cycles to get there: the first shots see a cold mold.'],
  cautions: [{ when: 'T > 318.15', says: HOT_MOLD }],
  related: ['COOL.CYCLE', 'COOL.RISE', 'COOL.TIME'],
  checks: [
    {
      given: {
        shotMass: '10 g',
        heatContent: '480 J/g',
        cycle: '120 s',
        area: '60000 mm²',
        film: '12 W/(m²·K)',
        airTemp: '20 °C',
      },
      expect: '75.5555555556 °C',
      within: 1e-9,
      from: 'by hand: 20 + 4800/120/(12 × 0.06)',
    },
    {
      given: {
        shotMass: '0.3 oz',
        heatContent: '420 J/g',
        cycle: '100 s',
        area: '90 in²',
        film: '2.2 Btu/(h·ft²·°F)',
        airTemp: '72 °F',
      },
      expect: '160.642226 °F',
      within: 1e-7,
      from: 'by hand: 72 + 1.8 × 8.50486 × 420/100/(12.4918 × 0.0580644)',
    },
    {
      given: {
        shotMass: '10 g',
        heatContent: '480 J/g',
        cycle: '1e15 s',
        area: '60000 mm²',
        film: '12 W/(m²·K)',
        airTemp: '20 °C',
      },
      expect: '20 °C',
      within: 1e-9,
      from: 'a mold that is never shot has the air’s temperature',
      limit: true,
    },
  ],
});
