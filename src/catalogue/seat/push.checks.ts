import { checks } from '../../core/checks';
import { seatPush } from './push';

export default checks(seatPush, [
  {
    given: { pressure: '25 MPa', faceArea: '200 mm²', holdBack: '500 N' },
    expect: '4500 N',
    within: 1e-12,
    from: 'by hand: 25 × 200 − 500',
  },
  {
    given: { pressure: '4000 psi', faceArea: '0.35 in²', holdBack: '120 lbf' },
    expect: '1280 lbf',
    within: 1e-12,
    from: 'by hand: 4000 × 0.35 − 120',
  },
  {
    given: { pressure: '10 MPa', faceArea: '100 mm²', holdBack: '1000 N' },
    expect: '0 N',
    from: 'just held back, nothing is left',
    limit: true,
  },
]);
