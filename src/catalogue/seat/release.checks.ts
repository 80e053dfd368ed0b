import { checks } from '../../core/checks';
import { seatRelease } from './release';

export default checks(seatRelease, [
  {
    given: { push: '5 kN', draft: '5 deg', seatFriction: 0.12, releaseFriction: 0.2 },
    expect: '2711.265 N',
    within: 1e-6,
    from: 'by hand: 5000 × (0.2 × 0.99619470 − 0.08715574)/(0.08715574 + 0.12 × 0.99619470)',
  },
  {
    given: { push: '1 kN', draft: '7 deg', seatFriction: 0.15 },
    expect: '99.76899 N',
    within: 1e-6,
    from: 'with one friction R/F = sin(φ − α)/sin(φ + α), φ = atan 0.15, by hand',
  },
  {
    given: { push: '5 kN', draft: '12 deg', seatFriction: 0 },
    expect: '0 N',
    from: 'without friction nothing holds the insert',
    limit: true,
  },
]);
