import { checks } from '../../core/checks';
import { pressInjection } from './injection';

export default checks(pressInjection, [
  {
    given: { airPressure: '0.6 MPa', airBore: '63 mm', plungerDia: '16 mm', efficiency: 1 },
    expect: '9.30234375 MPa',
    within: 1e-9,
    from: 'by hand: 0.6 × (63/16)²',
  },
  {
    given: { airPressure: '90 psi', airBore: '3.25 in', plungerDia: '0.75 in', efficiency: 0.9 },
    expect: '1521 psi',
    within: 1e-9,
    from: 'by hand: 0.9 × 90 × (3.25/0.75)²',
  },
  {
    given: { airPressure: '0.6 MPa', airBore: '20 mm', plungerDia: '20 mm', efficiency: 1 },
    expect: '0.6 MPa',
    within: 1e-12,
    from: 'equal bores pass the air’s own pressure on',
    limit: true,
  },
]);
