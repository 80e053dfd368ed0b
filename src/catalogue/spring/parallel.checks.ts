import { checks } from '../../core/checks';
import { springParallel } from './parallel';

export default checks(springParallel, [
  { given: { rates: ['4.5 N/mm', '4.5 N/mm'] }, expect: '9 N/mm', within: 1e-12, from: 'by hand: 2 × 4.5' },
  {
    given: { rates: ['12 lbf/in', '18 lbf/in'] },
    expect: '30 lbf/in',
    within: 1e-12,
    from: 'by hand: 12 + 18',
  },
  {
    given: { rates: ['8 N/mm'] },
    expect: '8 N/mm',
    within: 1e-12,
    from: 'one spring keeps its rate',
    limit: true,
  },
]);
