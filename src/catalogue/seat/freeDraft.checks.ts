import { checks } from '../../core/checks';
import { seatFreeDraft } from './freeDraft';

export default checks(seatFreeDraft, [
  {
    given: { friction: 0.15 },
    expect: '8.530766 deg',
    within: 1e-6,
    from: 'table of arctangents: atan 0.15 = 8.5308°',
  },
  { given: { friction: 1 }, expect: '45 deg', within: 1e-12, from: 'atan 1 = 45°' },
  { given: { friction: 0 }, expect: '0 deg', from: 'without friction every taper lets go', limit: true },
]);
