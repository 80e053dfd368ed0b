import { checks } from '../../core/checks';
import { pressReturn } from './return';

export default checks(pressReturn, [
  {
    given: { airPressure: '0.6 MPa', airBore: '63 mm', rodDia: '20 mm', efficiency: 1 },
    expect: '1681.851627099 N',
    within: 1e-8,
    from: 'by hand: 0.6 × π/4 × (3969 − 400)',
  },
  {
    given: { airPressure: '0.6 MPa', airBore: '20 mm', rodDia: '0 mm', efficiency: 1 },
    expect: '188.495559215 N',
    within: 1e-10,
    from: 'without a rod the whole piston: 0.6 × π × 100',
    limit: true,
  },
]);
