import { formula, input } from '../../core/define';
import { CLAMP_CAUTION } from './inputs';
import { collar, COLLAR, COLLAR_CHANGE, COLLAR_NOTE, POWER_SCREW, screwInputs, WEDGE } from './screw';

export const pressScrewClamp = formula({
  name: 'PRESS.SCREWCLAMP',
  summary: 'Clamp force that a hand screw makes.',
  inputs: [
    input('torque', 'T', 'torque', {
      min: '0 N·m',
      usual: ['0.5 N·m', '300 N·m'],
      says: 'Torque on the screw: pull times length of the handle',
    }),
    ...screwInputs,
  ],
  refuse: [
    {
      when: 'mu*l >= pi*d_m*cos(beta)',
      argument: 'lead',
      says: 'is too steep for this friction: the screw cannot be turned',
    },
  ],
  steps: {
    r_t: {
      gives: 'length',
      expr: 'd_m/2*(l + pi*mu*d_m/cos(beta))/(pi*d_m - mu*l/cos(beta))',
      says: 'Torque of the thread for each unit of force',
    },
    ...collar,
    F: { gives: 'force', expr: 'T/(r_t + r_c)', says: 'Force that takes up the torque' },
  },
  result: 'F',
  changes: [COLLAR_CHANGE],
  sources: [POWER_SCREW, WEDGE, COLLAR],
  notes: [
    COLLAR_NOTE,
    'Friction scatters by a third either way, and the force with it: a torque is no measurement of the clamp force.',
  ],
  cautions: [
    { says: CLAMP_CAUTION },
    { when: 'l > pi*mu*d_m/cos(beta)', says: 'The screw may run back by itself: lock it.' },
  ],
  related: ['PRESS.SCREWRELEASE', 'CLAMP.FORCE'],
});
