import { formula } from '../../core/define';
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
  cautions: [{ when: 'T_w > 318.15', says: HOT_MOLD }],
  related: ['COOL.MOLDTEMP', 'COST.CYCLE'],
});
