import { checks } from '../../core/checks';
import { springPreload } from './preload';

export default checks(springPreload, [
  {
    given: { rate: '8 N/mm', freeLength: '40 mm', pocketLength: '32 mm' },
    expect: '64 N',
    within: 1e-12,
    from: 'by hand: 8 × (40 − 32)',
  },
  {
    given: { rate: '25 lbf/in', freeLength: '1.5 in', pocketLength: '1.25 in', shim: '0.06 in' },
    expect: '7.75 lbf',
    within: 1e-12,
    from: 'by hand: 25 × (1.5 − 1.19)',
  },
  {
    given: { rate: '8 N/mm', freeLength: '30 mm', pocketLength: '32 mm' },
    expect: '0 N',
    from: 'a spring shorter than its pocket does not push',
    limit: true,
  },
]);
