import { checks } from '../../core/checks';
import { pressScrewClamp } from './screwClamp';

export default checks(pressScrewClamp, [
  {
    given: {
      torque: '15.85 N·m',
      lead: '5 mm',
      meanDia: '22.5 mm',
      friction: 0.09,
      flankHalfAngle: '0 deg',
      collarFriction: 0.06,
      collarDia: '45 mm',
    },
    expect: '5 kN',
    within: 1e-3,
    from: 'Shigley, solution of problem 8-4 read at a public page: 15.85 N·m raises 5 kN (printed to four digits)',
    kind: 'secondhand',
  },
  {
    given: { torque: '25 N·m', lead: '4 mm', meanDia: '18 mm', friction: 0.15 },
    expect: '6129.643237 N',
    within: 1e-9,
    from: 'by hand: 25000/(9 × (4 + π × 0.15 × 18/0.96814764)/(π × 18 − 0.15 × 4/0.96814764) + 0.15 × 13.5), the collar left out: the thread’s friction on 27 mm',
  },
  {
    given: {
      torque: '1 N·m',
      lead: '6.283185307179586 mm',
      meanDia: '20 mm',
      friction: 0,
      flankHalfAngle: '0 deg',
    },
    expect: '1000 N',
    within: 1e-9,
    from: 'without friction the work of a turn is 2π T = F l',
    limit: true,
  },
]);
