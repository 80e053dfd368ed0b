import { checks } from '../../core/checks';
import { pressPlungerSpeed } from './plungerSpeed';

export default checks(pressPlungerSpeed, [
  {
    given: {
      airPressure: '0.7 MPa',
      airBore: '80 mm',
      sonicConductance: '4 L/(s·bar)',
      cylinderPressure: '0.5 MPa',
      criticalRatio: 0.45,
    },
    expect: '888.285498509 mm/s',
    within: 1e-9,
    from: 'as a mass flow at 20 °C, its volume taken at the cylinder’s pressure, a calculation apart',
  },
  {
    given: {
      airPressure: '90 psi',
      airBore: '3.25 in',
      sonicConductance: '6 L/(s·bar)',
      cylinderPressure: '60 psi',
    },
    expect: '49.918381685 in/s',
    within: 1e-9,
    from: 'as a mass flow at 20 °C, its volume taken at the cylinder’s pressure, a calculation apart',
  },
  {
    given: { airPressure: '0.6 MPa', airBore: '50 mm', sonicConductance: '2 L/(s·bar)' },
    expect: '7050.22234364 mm/s',
    within: 1e-9,
    from: 'choked, into the atmosphere, the ratio no longer counts: 2 × 7.01325 L/s × 100/101.325 over 1963.495 mm², by hand',
    limit: true,
  },
]);
