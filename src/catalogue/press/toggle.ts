import { derived, formula, input } from '../../core/define';
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
      above: '0 deg',
      below: '90 deg',
      says: 'Angle of each link from the dead line',
    }),
  ],
  steps: {
    F: { gives: 'force', expr: 'F_h/(2*tan(theta))', says: 'Two equal links share the force at the knee' },
  },
  result: 'F',
  valid: [
    {
      holds: 'theta >= 0.02',
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
  checks: [
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
  ],
});
