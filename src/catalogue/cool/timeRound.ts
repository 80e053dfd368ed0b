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
  ratioLeft,
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
  run: (x, show) => {
    const left = ratioLeft(x);
    const time = coolingTime('round', x.at, x.diameter, x.resin, left);
    show('Y', left);
    show('Fo', (time * x.resin) / x.diameter ** 2);
    return time;
  },
  native: (x, write) => nativeCoolingTime('round', x, x.diameter.text, write),
  sources: [CARSLAW],
  notes: COOLING_NOTES,
  cautions: [{ says: HOT_PART }],
  related: ['COOL.TIME', 'FILL.RUNNER'],
  checks: [
    {
      given: {
        diameter: '6 mm',
        resin: '0.07 mm²/s',
        meltTemp: '220 °C',
        moldTemp: '40 °C',
        ejectTemp: '90 °C',
      },
      expect: '38.9458000673 s',
      within: 1e-6,
      from: 'by hand, the first term where it holds: 36/(23.1325 × 0.07) × ln(1.601975 × 180/50)',
    },
    {
      given: {
        diameter: '0.2 in',
        resin: '0.00013 in²/s',
        meltTemp: '450 °F',
        moldTemp: '110 °F',
        ejectTemp: '190 °F',
        at: 'average',
      },
      expect: '14.3671642448 s',
      within: 1e-6,
      from: 'by hand, the first term where it holds: 0.04/(23.1325 × 0.00013) × ln(0.691660 × 340/80)',
    },
    {
      given: {
        diameter: '20 mm',
        resin: '0.1 mm²/s',
        meltTemp: '100 °C',
        moldTemp: '0 °C',
        ejectTemp: '99.5 °C',
        at: 'average',
      },
      expect: '0.00491 s',
      within: 5e-3,
      from: 'at once after filling the surface is a half-space: 1 − Y = 4 √(4 a t/π D²)',
      limit: true,
    },
  ],
});
