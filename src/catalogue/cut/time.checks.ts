import { checks } from '../../core/checks';
import { cutTime } from './time';

export default checks(cutTime, [
  {
    given: { length: '40 in', feedRate: '12 in/min', passes: 3 },
    expect: '600 s',
    within: 1e-12,
    from: 'by hand: 3 × 40/12 = 10 min',
  },
  {
    given: { length: '1200 mm', feedRate: '400 mm/min' },
    expect: '180 s',
    within: 1e-12,
    from: 'by hand: 1200/400 = 3 min',
  },
  {
    given: { length: '0 mm', feedRate: '400 mm/min' },
    expect: '0 s',
    from: 'no way, no time',
    limit: true,
  },
]);
