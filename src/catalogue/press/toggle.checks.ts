import { checks } from '../../core/checks';
import { pressToggle } from './toggle';

export default checks(pressToggle, [
  {
    given: { handForce: '200 N', linkAngle: '5 deg' },
    expect: '1143.005 N',
    within: 1e-6,
    from: 'by hand: 200/(2 × 0.08748866)',
  },
  {
    given: { handForce: '40 lbf', linkAngle: '6 deg' },
    expect: '190.287289084 lbf',
    within: 1e-9,
    from: 'by hand: 40/(2 × 0.10510424)',
  },
  {
    given: { handForce: '100 N', linkAngle: '45 deg' },
    expect: '50 N',
    within: 1e-12,
    from: 'at 45° each link takes the half',
    limit: true,
  },
]);
