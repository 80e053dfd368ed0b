import { constant, derived, formula, input } from '../../core/define';
import { CLAMP_CAUTION } from './inputs';

export const pressToggle = formula({
  name: 'PRESS.TOGGLE',
  summary: 'Force of a toggle at an angle of its links from the dead line.',
  inputs: [
    input('handForce', 'F_h', 'force', {
      min: '0 N',
      usual: ['5 N', '5 kN'],
      says: 'Force at the knee, across the dead line',
    }),
    input('linkAngle', 'theta', 'angle', {
      usual: ['0.5 deg', '60 deg'],
      above: '0 deg',
      below: '90 deg',
      says: 'Angle of each link from the dead line',
    }),
  ],
  constants: {
    theta_c: constant('angle', '0.02 rad', 'Angle below which the stretch of the frame counts'),
  },
  steps: {
    F: { gives: 'force', expr: 'F_h/(2*tan(theta))', says: 'Two equal links share the force at the knee' },
  },
  result: 'F',
  valid: [
    {
      holds: 'theta >= theta_c',
      says: 'So near the dead line the stretch of the frame sets the force, not the hand.',
    },
  ],
  sources: [derived('Free body of the knee: F_h = 2 F tan θ, without friction')],
  notes: [
    'Locked at the dead line a toggle holds what the stretch of the frame makes: stiffness times interference, whatever the hand gave.',
  ],
  cautions: [
    {
      says: 'A toggle near its dead line multiplies force without limit: it crushes fingers and overloads screws. Set the interference, not the handle, as the press maker’s manual says.',
    },
    { says: CLAMP_CAUTION },
  ],
  related: ['PRESS.SCREWCLAMP', 'CLAMP.FORCE'],
});
