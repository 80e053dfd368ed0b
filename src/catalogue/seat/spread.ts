import { derived, formula } from '../../core/define';
import { draft, FREE_BODY, friction, frictionAngle, push, spreading } from './inputs';

export const seatSpread = formula({
  name: 'SEAT.SPREAD',
  summary: 'Force with which a pushed tapered insert spreads its pocket.',
  inputs: [push, draft, friction],
  steps: {
    ...frictionAngle,
    ...spreading,
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
});
