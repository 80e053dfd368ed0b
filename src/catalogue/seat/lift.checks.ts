import { checks } from '../../core/checks';
import { seatLift } from './lift';

export default checks(seatLift, [
  {
    given: { gap: '0.2 mm', draft: '5 deg' },
    expect: '2.2860105 mm',
    within: 1e-7,
    from: 'by hand: 0.2/0.08748866',
  },
  {
    given: { gap: '0.01 in', draft: '3 deg' },
    expect: '0.1908114 in',
    within: 1e-6,
    from: 'by hand: 0.01/0.05240778',
  },
  {
    given: { gap: '0 mm', draft: '3 deg' },
    expect: '0 mm',
    from: 'no gap, no lift',
    limit: true,
  },
  {
    given: { gap: '0.34995465 mm', draft: '5 deg' },
    expect: '4 mm',
    within: 1e-7,
    from: 'inverse of SEAT.CLEAR: 4 mm of lift open 4 × 0.08748866 mm',
    limit: true,
  },
]);
