import { checks } from '../../core/checks';
import { fillFrozen } from './frozen';

export default checks(fillFrozen, [
  {
    given: {
      resin: '0.08 mm²/s',
      meltTemp: '220 °C',
      moldTemp: '40 °C',
      noFlowTemp: '130 °C',
      time: '1 s',
    },
    expect: '0.2697959 mm',
    within: 1e-6,
    from: 'tables of the error function: erf 0.4769363 = 0.5; by hand 2 × 0.4769363 × √0.08',
  },
  {
    given: {
      resin: '0.09 mm²/s',
      meltTemp: '200 °C',
      moldTemp: '0 °C',
      noFlowTemp: '104.09997556 °C',
      time: '4 s',
    },
    expect: '0.6 mm',
    within: 1e-8,
    from: 'tables of the error function: erf 0.5 = 0.5204998778; by hand 2 × 0.5 × √0.36',
  },
  {
    given: {
      resin: 'PP',
      meltTemp: '230 °C',
      moldTemp: '40 °C',
      noFlowTemp: '140 °C',
      time: '0 s',
    },
    expect: '0 mm',
    from: 'at the moment of contact nothing is frozen',
    limit: true,
  },
]);
