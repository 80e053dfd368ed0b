import { checks } from '../../core/checks';
import { pressDaylight } from './daylight';

export default checks(pressDaylight, [
  {
    given: { opening: '180 mm', stackHeight: '120 mm', partDepth: '25 mm', lift: '10 mm', hand: '20 mm' },
    expect: '5 mm',
    within: 1e-9,
    from: 'by hand: 180 − 120 − 25 − 10 − 20',
  },
  {
    given: { opening: '7 in', stackHeight: '5 in', partDepth: '0.75 in', lift: '0.25 in' },
    expect: '1 in',
    within: 1e-9,
    from: 'by hand: 7 − 5 − 0.75 − 0.25',
  },
  {
    given: { opening: '100 mm', stackHeight: '100 mm', partDepth: '0 mm' },
    expect: '0 mm',
    from: 'a mold as high as the opening leaves no room',
    limit: true,
  },
]);
