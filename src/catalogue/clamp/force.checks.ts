import { checks } from '../../core/checks';
import { clampForce } from './force';

export default checks(clampForce, [
  {
    given: { projectedArea: '900 mm²', cavityPressure: '25 MPa' },
    expect: '27 kN',
    within: 1e-9,
    from: 'by hand: 900 × 25 × 1.2',
  },
  {
    given: { projectedArea: '2 in²', cavityPressure: '1500 psi', margin: 1.25 },
    expect: '3750 lbf',
    within: 1e-9,
    from: 'by hand: 2 × 1500 × 1.25',
  },
  {
    given: { projectedArea: '250 mm²', cavityPressure: '20 MPa', margin: 1 },
    expect: '5 kN',
    within: 1e-12,
    from: 'without a margin it is pressure times area',
    limit: true,
  },
]);
