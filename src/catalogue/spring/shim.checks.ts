import { checks } from '../../core/checks';
import { springShim } from './shim';

export default checks(springShim, [
  {
    given: { rate: '8 N/mm', freeLength: '40 mm', pocketLength: '32 mm', preload: '80 N' },
    expect: '2 mm',
    within: 1e-12,
    from: 'by hand: 32 − (40 − 80/8)',
  },
  {
    given: { rate: '25 lbf/in', freeLength: '1.5 in', pocketLength: '1.3 in', preload: '4 lbf' },
    expect: '-0.04 in',
    within: 1e-9,
    from: 'by hand: 1.3 − (1.5 − 4/25)',
  },
  {
    given: { rate: '8 N/mm', freeLength: '40 mm', pocketLength: '40 mm', preload: '0 N' },
    expect: '0 mm',
    from: 'no preload in a pocket of the free length needs no shim',
    limit: true,
  },
]);
