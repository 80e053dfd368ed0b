import { checks } from '../../core/checks';
import { ejectPinShear } from './pinShear';

export default checks(ejectPinShear, [
  {
    given: { force: '300 N', pins: 4, pinDia: '3 mm', wall: '1.5 mm' },
    expect: '5.30516477 MPa',
    within: 1e-8,
    from: 'by hand: 75/(π × 3 × 1.5) = 75/14.1371669',
  },
  {
    given: { force: '120 lbf', pins: 3, pinDia: '0.125 in', wall: '0.08 in' },
    expect: '1273.23954 psi',
    within: 1e-8,
    from: 'by hand: 40/(π × 0.01)',
  },
  {
    given: { force: '300 N', pins: 4, pinDia: '3 mm', wall: '0.75 mm' },
    expect: '10.6103295 MPa',
    within: 1e-8,
    from: 'at a wall of a quarter of the diameter rim and face are equal, and so are shear and pressure',
    limit: true,
  },
]);
