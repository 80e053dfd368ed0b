import { checks } from '../../core/checks';
import { plateRing } from './ring';

export default checks(plateRing, [
  {
    given: { innerRadius: '15 mm', outerRadius: '40 mm', pressure: '25 MPa', metal: '7075-T6' },
    expect: '0.00866774439 mm',
    within: 1e-8,
    from: 'by hand: 25 × 15/71700 × (1825/1375 + 0.33)',
  },
  {
    given: { innerRadius: '0.5 in', outerRadius: '1.25 in', pressure: '2500 psi', metal: '6061-T6' },
    expect: '0.00021401672 in',
    within: 1e-7,
    from: 'by hand: 2500 × 0.5/9.993100e6 × (1.8125/1.3125 + 0.33)',
  },
  {
    given: { innerRadius: '100 mm', outerRadius: '101 mm', pressure: '1 MPa', metal: '200 GPa' },
    expect: '0.05 mm',
    within: 0.01,
    from: 'a thin ring grows by p r²/(E t) = 10000/200000',
    limit: true,
  },
  {
    given: { innerRadius: '10 mm', outerRadius: '100 m', pressure: '20 MPa', metal: '200 GPa' },
    expect: '0.0013 mm',
    within: 1e-6,
    from: 'in an endless block u = p r (1 + ν)/E = 20 × 10 × 1.3/200000',
    limit: true,
  },
]);
