import { checks } from '../../core/checks';
import { clampSpare } from './spare';

export default checks(clampSpare, [
  {
    given: { clampForce: '15 kN', projectedArea: '1000 mm²', cavityPressure: '10 MPa' },
    expect: 1.5,
    within: 1e-12,
    from: 'by hand: 15000/(1000 × 10)',
  },
  {
    given: { clampForce: '5000 lbf', projectedArea: '2 in²', cavityPressure: '1800 psi' },
    expect: 1.38888888889,
    within: 1e-10,
    from: 'by hand: 5000/3600',
  },
  {
    given: { clampForce: '10 kN', projectedArea: '1000 mm²', cavityPressure: '10 MPa' },
    expect: 1,
    within: 1e-12,
    from: 'a clamp as strong as the melt',
    limit: true,
  },
]);
