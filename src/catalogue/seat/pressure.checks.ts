import { checks } from '../../core/checks';
import { seatPressure } from './pressure';

export default checks(seatPressure, [
  {
    given: { push: '2 kN', draft: '5 deg', friction: 0.15, contactArea: '750 mm²' },
    expect: '11.2714976 MPa',
    within: 1e-8,
    from: 'by hand: 2000/(0.08715574 + 0.15 × 0.99619470)/750',
  },
  {
    given: { push: '450 lbf', draft: '6 deg', friction: 0.12, contactArea: '1.2 in²' },
    expect: '1675.07113 psi',
    within: 1e-8,
    from: 'by hand: 450/(0.10452846 + 0.12 × 0.99452190)/1.2',
  },
  {
    given: { push: '1 kN', draft: '30 deg', friction: 0, contactArea: '100 mm²' },
    expect: '20 MPa',
    within: 1e-12,
    from: 'without friction N = F/sin 30° = 2 F',
    limit: true,
  },
]);
