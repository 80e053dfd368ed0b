import { checks } from '../../core/checks';
import { seatPushOut } from './pushOut';

export default checks(seatPushOut, [
  {
    given: {
      lift: '0 mm',
      release: '600 N',
      springRate: '8 N/mm',
      springPreload: '64 N',
      partGrip: '90 N',
      vacuum: '25 N',
    },
    expect: '1168.5 N',
    within: 1e-12,
    from: 'by hand: 1.5 × (600 + 64 + 90 + 25)',
  },
  {
    given: {
      lift: '0.2 in',
      release: '120 lbf',
      springRate: '25 lbf/in',
      springPreload: '6 lbf',
      partGrip: '15 lbf',
    },
    expect: '39 lbf',
    within: 1e-12,
    from: 'by hand: 1.5 × (6 + 25 × 0.2 + 15)',
  },
  {
    given: {
      lift: '5 mm',
      release: '600 N',
      springRate: '0 N/mm',
      springPreload: '0 N',
      partGrip: '0 N',
    },
    expect: '0 N',
    from: 'once loose, with no spring and no part, nothing holds it',
    limit: true,
  },
]);
