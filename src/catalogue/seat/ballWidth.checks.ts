import { checks } from '../../core/checks';
import { seatBallWidth } from './ballWidth';

export default checks(seatBallWidth, [
  {
    given: { ballDia: '6 mm', depth: '2 mm', draft: '4 deg' },
    expect: '6.71391952 mm',
    within: 1e-8,
    from: 'by hand: 2 × (5 × 0.06992681 + 3/0.99756405)',
  },
  {
    given: { ballDia: '20 mm', depth: '-4.5 mm', draft: '8 deg' },
    expect: '21.7425006321 mm',
    within: 1e-9,
    from: 'the distance from the ball’s centre to the flank set equal to its radius, by root search, a calculation apart',
  },
  {
    given: { ballDia: '10 mm', depth: '-5 mm', draft: '0.000001 deg' },
    expect: '10 mm',
    within: 1e-7,
    from: 'in a bore without taper the ball is as wide as the bore',
    limit: true,
  },
]);
