import { checks } from '../../core/checks';
import { fitPosition } from './position';

export default checks(fitPosition, [
  {
    given: { dx: '0.03 mm', dy: '0.04 mm' },
    expect: '0.1 mm',
    within: 1e-12,
    from: 'by hand: twice 0.05, by 3-4-5',
  },
  {
    given: { dx: '-0.005 in', dy: '0.012 in' },
    expect: '0.026 in',
    within: 1e-12,
    from: 'by hand: twice 0.013, by 5-12-13',
  },
  {
    given: { dx: '0.02 mm', dy: '0 mm' },
    expect: '0.04 mm',
    within: 1e-12,
    from: 'off one way alone, the zone is twice as wide',
    limit: true,
  },
]);
