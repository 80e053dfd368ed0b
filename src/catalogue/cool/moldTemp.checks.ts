import { checks } from '../../core/checks';
import { coolMoldTemp } from './moldTemp';

export default checks(coolMoldTemp, [
  {
    given: {
      shotMass: '10 g',
      heatContent: '480 J/g',
      cycle: '120 s',
      area: '60000 mm²',
      film: '12 W/(m²·K)',
      airTemp: '20 °C',
    },
    expect: '75.5555555556 °C',
    within: 1e-9,
    from: 'by hand: 20 + 4800/120/(12 × 0.06)',
  },
  {
    given: {
      shotMass: '0.3 oz',
      heatContent: '420 J/g',
      cycle: '100 s',
      area: '90 in²',
      film: '2.2 Btu/(h·ft²·°F)',
      airTemp: '72 °F',
    },
    expect: '160.642226 °F',
    within: 1e-7,
    from: 'by hand: 72 + 1.8 × 8.50486 × 420/100/(12.4918 × 0.0580644)',
  },
  {
    given: {
      shotMass: '10 g',
      heatContent: '480 J/g',
      cycle: '1e15 s',
      area: '60000 mm²',
      film: '12 W/(m²·K)',
      airTemp: '20 °C',
    },
    expect: '20 °C',
    within: 1e-9,
    from: 'a mold that is never shot has the air’s temperature',
    limit: true,
  },
]);
