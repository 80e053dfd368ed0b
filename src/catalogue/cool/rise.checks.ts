import { checks } from '../../core/checks';
import { coolRise } from './rise';

export default checks(coolRise, [
  {
    given: { shotMass: '10 g', heatContent: '480 J/g', moldMass: '1500 g', specificHeat: '0.896 J/(g·K)' },
    expect: '3.57142857143 °C',
    within: 1e-9,
    from: 'by hand: 4800/(1500 × 0.896)',
  },
  {
    given: { shotMass: '0.5 oz', heatContent: '400 J/g', moldMass: '50 oz', specificHeat: '0.46 J/(g·K)' },
    expect: '15.652173913 °F',
    within: 1e-9,
    from: 'by hand: 1.8 × 200/23',
  },
  {
    given: { shotMass: '1 g', heatContent: '1 J/g', moldMass: '1 g', specificHeat: '1 J/(g·K)' },
    expect: '1 °C',
    within: 1e-12,
    from: 'unit heat in unit heat capacity',
    limit: true,
  },
]);
