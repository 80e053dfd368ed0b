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

export const coolTimeRound = procedure({
  name: 'COOL.TIMEROUND',
  summary: 'Cooling time of a round bar, such as a runner or a boss.',
  inputs: [
    input('diameter', 's', 'length', {
      above: '0 mm',
      usual: ['0.5 mm', '40 mm'],
      says: 'Diameter of the bar',
    }),
    resin,
    meltTemp,
    moldTemp,
    ejectTemp,
    at,
  ],
  gives: 'time',
  method: 'Full Fourier-Bessel series of a long cylinder cooled from its surface, solved for the time.',
  steps: coolingSteps,
  run: (x, show) => coolingTime('round', x.diameter, x, show),
  native: (x, write) => nativeCoolingTime('round', x, x.diameter.text, write),
  sources: [CARSLAW],
  notes: COOLING_NOTES,
  cautions: [{ says: HOT_PART }],
  related: ['COOL.TIME', 'FILL.RUNNER'],
});
