import { checks } from '../../core/checks';
import { ejectPinPressure } from './pinPressure';

export default checks(ejectPinPressure, [
  {
    given: { force: '300 N', pins: 4, pinDia: '3 mm' },
    expect: '10.6103295 MPa',
    within: 1e-8,
    from: 'by hand: 300/(4 × 7.06858347)',
  },
  {
    given: { force: '120 lbf', pins: 3, pinDia: '0.125 in' },
    expect: '3259.49323 psi',
    within: 1e-8,
    from: 'by hand: 40/0.0122718463',
  },
  {
    given: { force: '0 N', pins: 4, pinDia: '3 mm' },
    expect: '0 MPa',
    from: 'no force, no pressure',
    limit: true,
  },
]);
