import { checks } from '../../core/checks';
import { seatSlideBack } from './slideBack';

export default checks(seatSlideBack, [
  {
    given: { push: '1 kN', draft: '12 deg', friction: 0.12 },
    expect: '264.4733833 N',
    within: 1e-8,
    from: 'by hand, φ = atan 0.12: 1000 × tan(12° − φ)/tan(12° + φ) = 1000 × 0.09025446/0.34126103',
  },
  {
    given: { push: '5 kN', draft: '5 deg', friction: 0.15 },
    expect: '0 N',
    from: 'below the friction angle of 8.53° the seat locks',
    limit: true,
  },
  {
    given: { push: '5 kN', draft: '5 deg', friction: 0 },
    expect: '5 kN',
    within: 1e-12,
    from: 'without friction it moves as soon as the load falls',
    limit: true,
  },
]);
