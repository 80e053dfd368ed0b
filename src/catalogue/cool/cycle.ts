import { formula } from '../../core/define';
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
import { moldTemp } from './inputs';

export const coolCycle = formula({
  name: 'COOL.CYCLE',
  summary: 'Shortest cycle that holds an uncooled mold at a temperature.',
  inputs: [shotMass, heatContent, moldTemp, area, film, airTemp],
  refuse: [
    {
      when: 'T_w <= T_a',
      argument: 'moldTemp',
      says: 'must be above {airTemp}: a mold without cooling gets no colder',
    },
  ],
  constants: burns,
  steps: {
    P: { gives: 'power', expr: 'alpha*A*(T_w - T_a)', says: 'Heat that the surface gives away' },
    t: { gives: 'time', expr: 'm*h/P', says: 'Time it takes for the heat of one shot' },
  },
  result: 't',
  sources: [LUMP, FILM, HEAT_CONTENTS],
  notes: [
    ...HEAT_NOTES,
    'Where this is longer than the cooling of the wall, the mold decides the cycle: COST.CYCLE takes the longer.',
  ],
  cautions: [hotMold('T_w')],
  related: ['COOL.MOLDTEMP', 'COST.CYCLE'],
});
