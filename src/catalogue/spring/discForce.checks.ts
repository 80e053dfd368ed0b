import { checks } from '../../core/checks';
import { springDiscForce } from './discForce';

export default checks(springDiscForce, [
  {
    given: {
      outsideDia: '8 mm',
      insideDia: '4.2 mm',
      thickness: '0.4 mm',
      coneHeight: '0.2 mm',
      deflection: '0.15 mm',
    },
    expect: '210 N',
    within: 6e-3,
    from: 'DIN 2093 series A, disc 8 × 4.2 × 0.4',
    kind: 'secondhand',
  },
  {
    given: {
      outsideDia: '20 mm',
      insideDia: '10.2 mm',
      thickness: '1.1 mm',
      coneHeight: '0.45 mm',
      deflection: '0.34 mm',
    },
    expect: '1530 N',
    within: 6e-3,
    from: 'DIN 2093 series A, disc 20 × 10.2 × 1.1',
    kind: 'secondhand',
  },
  {
    given: {
      outsideDia: '1.24 in',
      insideDia: '0.64 in',
      thickness: '0.07 in',
      coneHeight: '0.028 in',
      deflection: '0.028 in',
      modulus: '30 Mpsi',
    },
    expect: '1209.50099 lbf',
    within: 1e-6,
    from: 'by hand, at flat the bracket is 1: 4 × 30e6/0.91 × 0.07³ × 0.028/(0.6809926 × 1.24²)',
  },
  {
    given: {
      outsideDia: '20 mm',
      insideDia: '10.2 mm',
      thickness: '1.1 mm',
      coneHeight: '0.45 mm',
      deflection: '0 mm',
    },
    expect: '0 N',
    from: 'no deflection, no force',
    limit: true,
  },
]);
