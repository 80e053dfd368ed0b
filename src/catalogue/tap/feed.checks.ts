import { checks } from '../../core/checks';
import { tapFeed } from './feed';

export default checks(tapFeed, [
  {
    given: { thread: 'M6', rpm: '300 rpm' },
    expect: '300 mm/min',
    within: 1e-12,
    from: 'by hand: 300 × 1 mm',
  },
  {
    given: { thread: '1/4-20', rpm: '400 rpm' },
    expect: '20 in/min',
    within: 1e-12,
    from: 'by hand: 400/20',
  },
  {
    given: { thread: '1-8', rpm: '1 rpm' },
    expect: '0.125 in/min',
    within: 1e-12,
    from: 'at one turn a minute the pitch itself',
    limit: true,
  },
]);
