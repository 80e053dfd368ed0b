import { checks } from '../../core/checks';
import { coolTimeRound } from './timeRound';

export default checks(coolTimeRound, [
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
]);
