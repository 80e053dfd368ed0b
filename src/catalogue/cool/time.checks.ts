import { checks } from '../../core/checks';
import { coolTime } from './time';

export default checks(coolTime, [
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
]);
