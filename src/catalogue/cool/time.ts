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
  run: (x, show) => {
    const left = ratioLeft(x);
    const time = coolingTime('plate', x.at, x.wall, x.resin, left);
    show('Y', left);
    show('Fo', (time * x.resin) / x.wall ** 2);
    return time;
  },
  native: (x, write) => nativeCoolingTime('plate', x, x.wall.text, write),
  sources: [CARSLAW],
  notes: [...COOLING_NOTES, 'Cooled from one face only, give twice the wall.'],
  cautions: [{ says: HOT_PART }],
  related: ['COOL.TIMEROUND', 'COOL.CYCLE', 'COST.CYCLE'],
  checks: [
    {
      given: {
        wall: '2 mm',
        resin: '0.065 mm²/s',
        meltTemp: '220 °C',
        moldTemp: '30 °C',
        ejectTemp: '90 °C',
      },
      expect: '8.69329029266 s',
      within: 1e-6,
      from: 'by hand, the first term where it holds: 4/(π² × 0.065) × ln(4/π × 190/60)',
    },
    {
      given: {
        wall: '0.08 in',
        resin: '0.00012 in²/s',
        meltTemp: '430 °F',
        moldTemp: '100 °F',
        ejectTemp: '180 °F',
        at: 'average',
      },
      expect: '6.52267900861 s',
      within: 1e-6,
      from: 'by hand, the first term where it holds: 0.0064/(π² × 0.00012) × ln(8/π² × 330/80)',
    },
    {
      given: {
        wall: '2 mm',
        resin: '0.1 mm²/s',
        meltTemp: '100 °C',
        moldTemp: '0 °C',
        ejectTemp: '99.5 °C',
        at: 'average',
      },
      expect: '0.000196349541 s',
      within: 1e-7,
      from: 'at once after filling each face is a half-space: 0.005 = 4 √(a t/π s²)',
      limit: true,
    },
  ],
});
