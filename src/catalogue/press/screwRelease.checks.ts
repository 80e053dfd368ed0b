import { checks } from '../../core/checks';
import { pressScrewRelease } from './screwRelease';

export default checks(pressScrewRelease, [
  {
    given: {
      clampForce: '5 kN',
      lead: '5 mm',
      meanDia: '22.5 mm',
      friction: 0.09,
      flankHalfAngle: '0 deg',
      collarFriction: 0.06,
      collarDia: '45 mm',
    },
    expect: '7.83 N·m',
    within: 1e-3,
    from: 'Shigley, solution of problem 8-4 read at a public page: 7.83 N·m lowers 5 kN (printed to three digits)',
    kind: 'secondhand',
  },
  {
    given: { clampForce: '1200 lbf', lead: '0.2 in', meanDia: '0.9 in', friction: 0.12 },
    expect: '125.685010698 lbf·in',
    within: 1e-9,
    from: 'inclined plane: F [(d_m/2) tan(ρ − λ) + µ_c d_c/2], tan ρ = µ/cos β, the collar left out: the thread’s friction on 1.5 d_m; a calculation apart',
  },
  {
    given: {
      clampForce: '1 kN',
      lead: '6.283185307179586 mm',
      meanDia: '20 mm',
      friction: 0,
      flankHalfAngle: '0 deg',
    },
    expect: '-1 N·m',
    within: 1e-9,
    from: 'without friction the load turns the screw back with F l/2π',
    limit: true,
  },
]);
