import { checks } from '../../core/checks';
import { pressAirUse } from './airUse';

export default checks(pressAirUse, [
  {
    given: { airPressure: '0.6 MPa', airBore: '63 mm', rodDia: '20 mm', stroke: '100 mm' },
    expect: '4.097780793 L',
    within: 1e-9,
    from: 'by hand: π/4 × (2 × 0.63² − 0.2²) × 1 × 701325/101325 dm³',
  },
  {
    given: { airPressure: '0 MPa', airBore: '20 mm', rodDia: '0 mm', stroke: '100 mm' },
    expect: '0.0628318530718 L',
    within: 1e-10,
    from: 'at no gauge pressure just the volume swept',
    limit: true,
  },
]);
