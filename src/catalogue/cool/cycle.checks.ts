import { checks } from '../../core/checks';
import { coolCycle } from './cycle';

export default checks(coolCycle, [
  {
    given: {
      shotMass: '8 g',
      heatContent: '400 J/g',
      moldTemp: '60 °C',
      area: '50000 mm²',
      film: '12 W/(m²·K)',
      airTemp: '22 °C',
    },
    expect: '140.350877193 s',
    within: 1e-9,
    from: 'by hand: 3200/(12 × 0.05 × 38)',
  },
  {
    given: {
      shotMass: '10 g',
      heatContent: '480 J/g',
      moldTemp: '75.5555555555556 °C',
      area: '60000 mm²',
      film: '12 W/(m²·K)',
      airTemp: '20 °C',
    },
    expect: '120 s',
    within: 1e-9,
    from: 'inverse of COOL.MOLDTEMP’s hand calculation',
    limit: true,
  },
]);
