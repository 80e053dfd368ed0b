import { derived, formula } from '../../core/define';
import { draft, friction, frictionAngle, push, slidingBack } from './inputs';

export const seatSlideBack = formula({
  name: 'SEAT.SLIDEBACK',
  summary: 'Load left at which a seat starts to slide back while its push is taken off; 0 if it locks.',
  inputs: [push, draft, friction],
  steps: {
    ...frictionAngle,
    ...slidingBack,
    R: {
      gives: 'force',
      expr: 'F*t',
      says: 'Friction turned round at the radial force of seating: R = F tan(α−φ)/tan(α+φ)',
    },
  },
  result: 'R',
  changes: [
    {
      basis: 2,
      says: 'An elastic seat keeps its radial force, not its normal force, when friction turns round: less by up to a quarter.',
    },
  ],
  sources: [
    derived(
      'Free body of the insert, friction at its limit first inward, then outward, on an elastic seat: the radial force unchanged',
    ),
  ],
  notes: [
    'Above this load the insert keeps its full sink; below it the seat moves back as the load falls. At 0 it locks and SEAT.RELEASE gives the push that frees it.',
  ],
  cautions: [
    {
      when: 'mu >= tan(alpha)',
      says: 'Self-locking: the insert does not slide back and must be pushed out.',
    },
    {
      when: 'mu < tan(alpha)',
      says: 'The insert may jump back as the load falls past this value: keep fingers out of the opening.',
    },
  ],
  related: ['SEAT.RELEASE', 'SEAT.FREEDRAFT'],
});
