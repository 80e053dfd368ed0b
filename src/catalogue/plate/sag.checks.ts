import { checks } from '../../core/checks';
import { plateSag } from './sag';

export default checks(plateSag, [
  {
    given: {
      span: '90 mm',
      width: '110 mm',
      thickness: '28 mm',
      pressure: '12 MPa',
      loadLength: '50 mm',
      loadWidth: '60 mm',
      metal: 'P20',
    },
    expect: '0.014361255923 mm',
    within: 1e-9,
    from: 'by hand: W = 36 kN; bending 36000 × 5057000/(32 × 205000 × 110 × 28³) = 0.01149265, shear 1.2 × 36000 × 130/(8 × 79457.36 × 3080) = 0.00286851',
  },
  {
    given: {
      span: '3.5 in',
      width: '4 in',
      thickness: '1 in',
      pressure: '1800 psi',
      loadLength: '2 in',
      loadWidth: '2.2 in',
      metal: '6061-T6',
    },
    expect: '0.00222185555 in',
    within: 1e-8,
    from: 'by hand: W = 7920 lbf; bending 7920 × 295/(32 × 9.993100e6 × 4), shear 1.2 × 7920 × 5/(8 × 3.756805e6 × 4)',
  },
  {
    given: {
      span: '1 m',
      width: '20 mm',
      thickness: '5 mm',
      pressure: '0.01 MPa',
      loadLength: '1 m',
      loadWidth: '20 mm',
      metal: '205 GPa',
    },
    expect: '60.9756098 mm',
    within: 1e-4,
    from: 'a slender beam loaded all over: 5 w L⁴/(384 E I), shear no longer counts',
    limit: true,
  },
  {
    given: {
      span: '200 mm',
      width: '50 mm',
      thickness: '4 mm',
      pressure: '10 MPa',
      loadLength: '0.001 mm',
      loadWidth: '50 mm',
      metal: '200 GPa',
    },
    expect: '0.0015625 mm',
    within: 0.002,
    from: 'a narrow load in the middle: W L³/(48 E I) = 0.5 × 200³/(48 × 200000 × 50 × 4³/12), shear 0.1 %',
    limit: true,
  },
]);
