import { checks } from '../../core/checks';
import { springForce } from './force';

export default checks(springForce, [
  {
    given: { rate: '6.5 N/mm', freeLength: '50 mm', length: '38 mm' },
    expect: '78 N',
    within: 1e-12,
    from: 'by hand: 6.5 × (50 − 38)',
  },
  {
    given: { rate: '28 lbf/in', freeLength: '2 in', length: '1.6 in' },
    expect: '11.2 lbf',
    within: 1e-12,
    from: 'by hand: 28 × (2 − 1.6)',
  },
  {
    given: { rate: '6.5 N/mm', freeLength: '50 mm', length: '52 mm' },
    expect: '0 N',
    from: 'longer than free it does not push, nor pull',
    limit: true,
  },
]);
