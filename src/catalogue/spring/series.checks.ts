import { checks } from '../../core/checks';
import { springSeries } from './series';

export default checks(springSeries, [
  { given: { rates: ['10 N/mm', '15 N/mm'] }, expect: '6 N/mm', within: 1e-12, from: 'by hand: 150/25' },
  {
    given: { rates: ['20 lbf/in', '30 lbf/in', '60 lbf/in'] },
    expect: '10 lbf/in',
    within: 1e-12,
    from: 'by hand: 1/20 + 1/30 + 1/60 = 1/10',
  },
  {
    given: { rates: ['8 N/mm'] },
    expect: '8 N/mm',
    within: 1e-12,
    from: 'one spring is its own series',
    limit: true,
  },
  {
    given: { rates: ['8 N/mm', '1e15 N/mm'] },
    expect: '8 N/mm',
    within: 1e-12,
    from: 'a rigid spring in series changes nothing',
    limit: true,
  },
]);
