import { checks } from '../../core/checks';
import { ejectTotal } from './total';

export default checks(ejectTotal, [
  {
    given: { forces: ['400 N', '90 N', '35 N'] },
    expect: '787.5 N',
    within: 1e-12,
    from: 'by hand: 1.5 × (400 + 90 + 35)',
  },
  {
    given: { forces: ['80 lbf', '20 lbf'], margin: 2 },
    expect: '200 lbf',
    within: 1e-12,
    from: 'by hand: 2 × 100',
  },
  {
    given: { forces: ['120 N'], margin: 1 },
    expect: '120 N',
    within: 1e-12,
    from: 'one force without a margin is itself',
    limit: true,
  },
]);
