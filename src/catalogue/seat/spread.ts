import { derived, formula } from '../../core/define';
import { draft, FREE_BODY, friction, frictionAngle, push } from './inputs';

export const seatSpread = formula({
  name: 'SEAT.SPREAD',
  summary: 'Force with which a pushed tapered insert spreads its pocket.',
  inputs: [push, draft, friction],
  steps: {
    ...frictionAngle,
    S: {
      gives: 'force',
      expr: 'F/tan(alpha + phi)',
      says: 'The flank’s reaction leans by draft and friction angle together: S = F cot(α+φ)',
    },
  },
  result: 'S',
  sources: [derived(FREE_BODY)],
  notes: [
    'For two flat flanks each wall bears half of it. Around a cone it is the sum of the radial force: over 2π r L it is the mean radial pressure.',
  ],
  cautions: [
    {
      says: 'It opens the pocket and bends the plates beside it: check the wall with PLATE.WALL or PLATE.RING.',
    },
  ],
  related: ['SEAT.FORCE', 'SEAT.PRESSURE', 'PLATE.WALL', 'PLATE.RING'],
  checks: [
    {
      given: { push: '3 kN', draft: '5 deg', friction: 0.15 },
      expect: '12466.4060 N',
      within: 1e-8,
      from: 'by hand without the friction angle: 3000 × (0.99619470 − 0.15 × 0.08715574)/(0.08715574 + 0.15 × 0.99619470)',
    },
    {
      given: { push: '300 lbf', draft: '8 deg', friction: 0.15 },
      expect: '1010.78963 lbf',
      within: 1e-8,
      from: 'by hand: 300 × (0.99026807 − 0.15 × 0.13917310)/(0.13917310 + 0.15 × 0.99026807)',
    },
    {
      given: { push: '1 kN', draft: '26.56505117707799 deg', friction: 0 },
      expect: '2 kN',
      within: 1e-12,
      from: 'a frictionless wedge of slope 1 to 2 doubles the push',
      limit: true,
    },
  ],
});
