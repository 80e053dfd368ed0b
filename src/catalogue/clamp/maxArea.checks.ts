import { checks } from '../../core/checks';
import { clampMaxArea } from './maxArea';

export default checks(clampMaxArea, [
  {
    given: { clampForce: '8 kN', cavityPressure: '15 MPa', margin: 1.25 },
    expect: '426.6667 mm²',
    within: 1e-6,
    from: 'by hand: 8000/(1.25 × 15)',
  },
  {
    given: { clampForce: '4000 lbf', cavityPressure: '1400 psi', margin: 1.25 },
    expect: '2.28571428571 in²',
    within: 1e-9,
    from: 'by hand: 4000/1750',
  },
  {
    given: { clampForce: '10 kN', cavityPressure: '10 MPa', margin: 1 },
    expect: '1000 mm²',
    within: 1e-12,
    from: 'without a margin force over pressure',
    limit: true,
  },
]);
