import { input, procedure } from '../../core/define';
import {
  at,
  CARSLAW,
  COOLING_NOTES,
  coolingSteps,
  coolingTime,
  ejectTemp,
  HOT_PART,
  meltTemp,
  moldTemp,
  nativeCoolingTime,
  resin,
} from './inputs';

export const coolTime = procedure({
  name: 'COOL.TIME',
  summary: 'Cooling time of a wall between two mold faces.',
  inputs: [
    input('wall', 's', 'length', { above: '0 mm', usual: ['0.3 mm', '25 mm'], says: 'Wall thickness' }),
    resin,
    meltTemp,
    moldTemp,
    ejectTemp,
    at,
  ],
  gives: 'time',
  method: 'Full Fourier series of a plate cooled from both faces, solved for the time.',
  steps: coolingSteps,
  run: (x, show) => coolingTime('plate', x.wall, x, show),
  native: (x, write) => nativeCoolingTime('plate', x, x.wall.text, write),
  sources: [CARSLAW],
  notes: [...COOLING_NOTES, 'Cooled from one face only, give twice the wall.'],
  cautions: [{ says: HOT_PART }],
  related: ['COOL.TIMEROUND', 'COOL.CYCLE', 'COST.CYCLE'],
});
