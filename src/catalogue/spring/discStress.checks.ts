import { checks } from '../../core/checks';
import { springDiscStress } from './discStress';

export default checks(springDiscStress, [
  {
    given: {
      outsideDia: '8 mm',
      insideDia: '4.2 mm',
      thickness: '0.4 mm',
      coneHeight: '0.2 mm',
      deflection: '0.15 mm',
      point: 'II',
    },
    expect: '1220 MPa',
    within: 5e-3,
    from: 'DIN 2093 series A, disc 8 × 4.2 × 0.4, largest tension',
    kind: 'secondhand',
  },
  {
    given: {
      outsideDia: '8 mm',
      insideDia: '4.2 mm',
      thickness: '0.4 mm',
      coneHeight: '0.2 mm',
      deflection: '0.15 mm',
      point: 'OM',
    },
    expect: '-1200 MPa',
    within: 5e-3,
    from: 'DIN 2093 series A, disc 8 × 4.2 × 0.4, stress OM',
    kind: 'secondhand',
  },
  {
    given: {
      outsideDia: '31.5 mm',
      insideDia: '16.3 mm',
      thickness: '1.75 mm',
      coneHeight: '0.7 mm',
      deflection: '0.53 mm',
      point: 'III',
    },
    expect: '1110.79307 MPa',
    within: 1e-8,
    from: 'by hand: −1244.96964/1.93251534 × ((1.20428186 − 2.70326723) × 0.24857143 − 1.35163361)',
  },
  {
    given: {
      outsideDia: '0.984 in',
      insideDia: '0.48 in',
      thickness: '0.059 in',
      coneHeight: '0.0217 in',
      deflection: '0 in',
      point: 'I',
    },
    expect: '0 psi',
    from: 'no deflection, no stress',
    limit: true,
  },
]);
