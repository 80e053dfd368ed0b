import { checks } from '../../core/checks';
import { springHold } from './hold';

export default checks(springHold, [
  {
    given: { movingMass: '120 g', drag: '3 N' },
    expect: '6.265197 N',
    within: 1e-9,
    from: 'by hand: 1.5 × (0.12 × 9.80665 + 3)',
  },
  {
    given: { movingMass: '6 oz', drag: '0.5 lbf', gLoad: 2, margin: 2 },
    expect: '2.5 lbf',
    within: 1e-9,
    from: 'by hand: 2 × (6/16 × 2 + 0.5), a pound weighing a pound-force',
  },
  {
    given: { movingMass: '0 g', drag: '4 N', margin: 1 },
    expect: '4 N',
    within: 1e-12,
    from: 'without mass or margin the drag alone',
    limit: true,
  },
]);
