import { checks } from '../../core/checks';
import { seatRelease } from './release';

export default checks(seatRelease, [
  {
    given: { push: '5 kN', draft: '5 deg', seatFriction: 0.12, releaseFriction: 0.2 },
    expect: '2636.664428 N',
    within: 1e-6,
    from: 'by hand: 5000 × tan(atan 0.2 − 5°)/tan(5° + atan 0.12) = 5000 × 0.11057650/0.20969012',
  },
  {
    given: { push: '1 kN', draft: '7 deg', seatFriction: 0.15 },
    expect: '96.16042030 N',
    within: 1e-6,
    from: 'with one friction R/F = tan(φ − α)/tan(φ + α), φ = atan 0.15: 0.02672326/0.27790289, by hand',
  },
  {
    given: { push: '5 kN', draft: '12 deg', seatFriction: 0 },
    expect: '0 N',
    from: 'without friction nothing holds the insert',
    limit: true,
  },
]);
