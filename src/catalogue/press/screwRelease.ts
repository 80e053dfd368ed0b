import { formula, input } from '../../core/define';
import { CLAMP_CAUTION } from './inputs';
import { collar, COLLAR, COLLAR_CHANGE, COLLAR_NOTE, POWER_SCREW, screwInputs, WEDGE } from './screw';

export const pressScrewRelease = formula({
  name: 'PRESS.SCREWRELEASE',
  summary: 'Torque that slackens a hand screw under its clamp force; negative: it runs back by itself.',
  inputs: [
    input('clampForce', 'F', 'force', {
      min: '0 N',
      usual: ['50 N', '300 kN'],
      says: 'Clamp force on the screw',
    }),
    ...screwInputs,
  ],
  steps: {
    r_t: {
      gives: 'length',
      expr: 'd_m/2*(pi*mu*d_m/cos(beta) - l)/(pi*d_m + mu*l/cos(beta))',
      says: 'Torque of the thread for each unit of force, the load helping',
    },
    ...collar,
    T: { gives: 'torque', expr: 'F*(r_t + r_c)', says: 'Both together' },
  },
  result: 'T',
  changes: [COLLAR_CHANGE],
  sources: [POWER_SCREW, WEDGE, COLLAR],
  notes: [COLLAR_NOTE],
  cautions: [
    {
      when: 'T < 0',
      says: 'Negative: the screw runs back by itself when it is let go. Lock it, and keep clear of the handle.',
    },
    { says: CLAMP_CAUTION },
  ],
  related: ['PRESS.SCREWCLAMP'],
});
