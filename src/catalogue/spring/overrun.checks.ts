import { checks } from '../../core/checks';
import { springOverrun } from './overrun';

export default checks(springOverrun, [
  {
    given: { freeLength: '40 mm', solidLength: '18 mm', length: '30 mm' },
    expect: 1.2,
    within: 1e-12,
    from: 'by hand: (30 − 18)/(40 − 30)',
  },
  {
    given: { freeLength: '1.5 in', solidLength: '0.8 in', length: '0.9 in' },
    expect: 0.166666666667,
    within: 1e-9,
    from: 'by hand: 0.1/0.6',
  },
  {
    given: { freeLength: '40 mm', solidLength: '18 mm', length: '18 mm' },
    expect: 0,
    from: 'solid, nothing is left',
    limit: true,
  },
]);
