import { checks } from '../../core/checks';
import { seatForce } from './force';

export default checks(seatForce, [
  {
    given: { push: '10 kN', draft: '10 deg', friction: 0.15 },
    expect: '31.1168451 kN',
    within: 1e-8,
    from: 'by hand: 10/(0.17364818 + 0.15 × 0.98480775)',
  },
  {
    given: { push: '10 kN', draft: '30 deg', friction: 0 },
    expect: '20 kN',
    within: 1e-12,
    from: 'without friction N = F/sin 30° = 2 F',
    limit: true,
  },
]);
