import { checks } from '../../core/checks';
import { cutBend } from './bend';

export default checks(cutBend, [
  {
    given: {
      force: '40 N',
      cutterDia: '6 mm',
      fluteLength: '15 mm',
      neckDia: '5.5 mm',
      neckLength: '25 mm',
      modulus: '580000 MPa',
    },
    expect: '0.0340046322351 mm',
    within: 1e-10,
    from: 'by hand: 40/(3 × 580000) × [(40³ − 15³)/44.918025 + 15³/26.057626], I = π d⁴/64 with d = 5.5 and 4.8',
  },
  {
    given: { force: '10 lbf', cutterDia: '0.25 in', fluteLength: '0.75 in', modulus: '84 Mpsi' },
    expect: '0.000213153941641 in',
    within: 1e-10,
    from: 'by hand: 10 × 0.75³/(3 × 84e6 × π × 0.2⁴/64)',
  },
  {
    given: {
      force: '50 N',
      cutterDia: '6 mm',
      fluteLength: '10 mm',
      neckDia: '4.8 mm',
      neckLength: '20 mm',
      modulus: '580000 MPa',
    },
    expect: '0.029774856152 mm',
    within: 1e-10,
    from: 'a neck of 0.8 D is a uniform bar of the whole length: F L³/(3 E I)',
    limit: true,
  },
]);
