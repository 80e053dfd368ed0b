import { checks } from '../../core/checks';
import { springLength } from './length';

export default checks(springLength, [
  {
    given: { rate: '8 N/mm', freeLength: '40 mm', force: '96 N' },
    expect: '28 mm',
    within: 1e-12,
    from: 'by hand: 40 − 96/8',
  },
  {
    given: { rate: '25 lbf/in', freeLength: '1.5 in', force: '8 lbf' },
    expect: '1.18 in',
    within: 1e-12,
    from: 'by hand: 1.5 − 8/25',
  },
  {
    given: { rate: '6.5 N/mm', freeLength: '50 mm', force: '78 N' },
    expect: '38 mm',
    within: 1e-12,
    from: 'inverse of SPRING.FORCE: 6.5 × (50 − 38) = 78',
    limit: true,
  },
  {
    given: { rate: '8 N/mm', freeLength: '40 mm', force: '0 N' },
    expect: '40 mm',
    within: 1e-12,
    from: 'unloaded it has its free length',
    limit: true,
  },
]);
