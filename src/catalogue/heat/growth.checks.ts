import { checks } from '../../core/checks';
import { heatGrowth } from './growth';

export default checks(heatGrowth, [
  {
    given: { length: '100 mm', metal: 'P20', rise: '40 °C' },
    expect: '0.0512 mm',
    within: 1e-9,
    from: 'by hand: 100 × 12.8e-6 × 40, P20 at 12.8e-6 per °C from its data sheet',
    kind: 'secondhand',
  },
  {
    given: { length: '4 in', metal: '6061-T6', rise: '70 °F' },
    expect: '0.00367111111 in',
    within: 1e-9,
    from: 'by hand: 4 × 23.6e-6/1.8 × 70',
  },
  {
    given: { length: '100 mm', metal: '12e-6 1/°C', rise: '0 °C' },
    expect: '0 mm',
    from: 'no rise, no growth',
    limit: true,
  },
]);
