import { checks } from '../../core/checks';
import { seatSpread } from './spread';

export default checks(seatSpread, [
  {
    given: { push: '3 kN', draft: '5 deg', friction: 0.15 },
    expect: '12466.4060 N',
    within: 1e-8,
    from: 'by hand without the friction angle: 3000 × (0.99619470 − 0.15 × 0.08715574)/(0.08715574 + 0.15 × 0.99619470)',
  },
  {
    given: { push: '300 lbf', draft: '8 deg', friction: 0.15 },
    expect: '1010.78963 lbf',
    within: 1e-8,
    from: 'by hand: 300 × (0.99026807 − 0.15 × 0.13917310)/(0.13917310 + 0.15 × 0.99026807)',
  },
  {
    given: { push: '1 kN', draft: '26.56505117707799 deg', friction: 0 },
    expect: '2 kN',
    within: 1e-12,
    from: 'a frictionless wedge of slope 1 to 2 doubles the push',
    limit: true,
  },
]);
