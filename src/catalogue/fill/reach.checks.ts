import { checks } from '../../core/checks';
import { fillReach } from './reach';

export default checks(fillReach, [
  {
    given: {
      pressure: '9 MPa',
      gap: '2 mm',
      frontSpeed: '80 mm/s',
      consistency: '8000 Pa·s^n',
      powerIndex: 0.4,
    },
    expect: '106.814822255 mm',
    within: 1e-10,
    from: 'by hand: 9e6 × 2/(2 × 8000 × [2 × 1.8/0.4 × 80/2]^0.4) mm',
  },
  {
    given: {
      pressure: '10.4604285213184 MPa',
      gap: '2 mm',
      frontSpeed: '240 mm/s',
      consistency: '8000 Pa·s^n',
      powerIndex: 0.4,
    },
    expect: '80 mm',
    within: 1e-12,
    from: 'inverse of FILL.SLITDROP with a front speed of 12 cm³/s over 25 × 2 mm',
    limit: true,
  },
  {
    given: {
      pressure: '9 MPa',
      gap: '2 mm',
      frontSpeed: '80 mm/s',
      consistency: '200 Pa·s^n',
      powerIndex: 1,
    },
    expect: '187.5 mm',
    within: 1e-12,
    from: 'plane Poiseuille flow of a Newtonian melt: p h²/(12 µ v) = 9 × 4/(12 × 200e-6 × 80) mm',
    limit: true,
  },
]);
