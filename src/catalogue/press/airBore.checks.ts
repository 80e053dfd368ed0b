import { checks } from '../../core/checks';
import { pressAirBore } from './airBore';

export default checks(pressAirBore, [
  {
    given: { meltPressure: '40 MPa', airPressure: '0.6 MPa', plungerDia: '20 mm', efficiency: 1 },
    expect: '163.2993 mm',
    within: 1e-6,
    from: 'by hand: 20 × √(40/0.6)',
  },
  {
    given: { meltPressure: '3000 psi', airPressure: '90 psi', plungerDia: '0.75 in', efficiency: 0.9 },
    expect: '4.56435464588 in',
    within: 1e-9,
    from: 'by hand: 0.75 × √(3000/81)',
  },
  {
    given: { meltPressure: '0.6 MPa', airPressure: '0.6 MPa', plungerDia: '20 mm', efficiency: 1 },
    expect: '20 mm',
    within: 1e-12,
    from: 'the air’s own pressure takes the plunger’s own bore',
    limit: true,
  },
]);
