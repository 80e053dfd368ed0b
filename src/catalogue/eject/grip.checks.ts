import { checks } from '../../core/checks';
import { ejectGrip } from './grip';

export default checks(ejectGrip, [
  {
    given: { modulus: '500 MPa', strain: 0.01, wall: '2 mm', radius: '15 mm', poisson: 0.4 },
    expect: '0.833333333 MPa',
    within: 1e-8,
    from: 'by hand: 500 × 0.01 × 2/(15 × (1 − 0.4/2)) = 10/12',
  },
  {
    given: { modulus: '80 ksi', strain: 0.006, wall: '0.08 in', radius: '0.4 in', poisson: 0.35 },
    expect: '116.363636 psi',
    within: 1e-8,
    from: 'by hand: 80000 × 0.006 × 0.2/(1 − 0.175) = 96/0.825',
  },
  {
    given: { modulus: '600 MPa', strain: '0.8 %', wall: '1.8 mm', radius: '12 mm' },
    expect: '0.72 MPa',
    within: 1e-12,
    from: 'an open tube: E ε t/r = 600 × 0.008 × 1.8/12',
    limit: true,
  },
  {
    given: { modulus: '600 MPa', strain: 0, wall: '1.8 mm', radius: '12 mm' },
    expect: '0 MPa',
    from: 'a part that has not shrunk does not grip',
    limit: true,
  },
]);
