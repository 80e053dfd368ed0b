import { checks } from '../../core/checks';
import { ejectForce } from './force';

export default checks(ejectForce, [
  {
    given: { grip: '3 MPa', contactArea: '2500 mm²', draft: '2 deg', friction: 0.4 },
    expect: '2736.426 N',
    within: 1e-6,
    from: 'by hand: 7500 × (0.4 × 0.99939083 − 0.03489950)',
  },
  {
    given: { grip: '200 psi', contactArea: '3 in²', draft: '0.5 deg', friction: 0.4 },
    expect: '234.75494 lbf',
    within: 1e-7,
    from: 'by hand: 600 × (0.4 × 0.99996192 − 0.00872654)',
  },
  {
    given: { grip: '2 MPa', contactArea: '1800 mm²', draft: '0 deg', friction: 0.3 },
    expect: '1080 N',
    within: 1e-12,
    from: 'without draft it is µ p A = 0.3 × 3600',
    limit: true,
  },
  {
    given: { grip: '2 MPa', contactArea: '1800 mm²', draft: '25 deg', friction: 0.3 },
    expect: '0 N',
    from: 'a draft above atan 0.3 = 16.7° lets the part fall off; the force is never negative',
    limit: true,
  },
]);
