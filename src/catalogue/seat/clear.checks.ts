import { checks } from '../../core/checks';
import { seatClear } from './clear';

export default checks(seatClear, [
  {
    given: { lift: '4 mm', draft: '5 deg' },
    expect: '0.34995465 mm',
    within: 1e-7,
    from: 'by hand: 4 × 0.08748866',
  },
  {
    given: { lift: '1/8 in', draft: '8 deg' },
    expect: '0.0175676 in',
    within: 1e-6,
    from: 'by hand: 0.125 × 0.14054083',
  },
  { given: { lift: '0 mm', draft: '3 deg' }, expect: '0 mm', from: 'seated, there is no gap', limit: true },
]);
