import { checks } from '../../core/checks';
import { seatPinWidth } from './pinWidth';

export default checks(seatPinWidth, [
  {
    given: { overPins: '30.02 mm', pinDia: '6 mm', draft: '7 deg' },
    expect: '17.2382336818 mm',
    within: 1e-9,
    from: 'a roll tangent to plate and flank, its centre found by root search, a calculation apart',
  },
  {
    given: { overPins: '1.5 in', pinDia: '0.25 in', draft: '2.5 deg', base: 'large' },
    expect: '1.0106770644 in',
    within: 1e-9,
    from: 'by hand: 1.5 − 0.25 × (1 − 0.04366094 + 1.00095269)',
  },
  {
    given: { overPins: '30 mm', pinDia: '6 mm', draft: '0.000001 deg' },
    expect: '18 mm',
    within: 1e-7,
    from: 'without taper a pin takes its diameter on each side',
    limit: true,
  },
]);
