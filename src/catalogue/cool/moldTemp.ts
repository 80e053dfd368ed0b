import { formula, input } from '../../core/define';
import {
  airTemp,
  burns,
  area,
  FILM,
  film,
  HEAT_CONTENTS,
  HEAT_NOTES,
  heatContent,
  hotMold,
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
  constants: burns,
  steps: {
    P: { gives: 'power', expr: 'm*h/t', says: 'Heat that the shots bring' },
    r: { gives: 'rise', expr: 'P/(alpha*A)', says: 'Rise over the air at which the surface gives it away' },
    T: { gives: 'temperature', expr: 'T_a + r', says: 'Above the air' },
  },
  result: 'T',
  sources: [LUMP, FILM, HEAT_CONTENTS],
  notes: [...HEAT_NOTES, 'It takes many cycles to get there: the first shots see a cold mold.'],
  cautions: [hotMold('T')],
  related: ['COOL.CYCLE', 'COOL.RISE', 'COOL.TIME'],
});
