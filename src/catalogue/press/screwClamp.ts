import { formula, input } from '../../core/define';
import { CLAMP_CAUTION } from './inputs';
import { POWER_SCREW, screwInputs, WEDGE } from './screw';

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
    r_c: { gives: 'length', expr: 'mu_c*d_c/2', says: 'Torque of the collar for each unit of force' },
    F: { gives: 'force', expr: 'T/(r_t + r_c)', says: 'Force that takes up the torque' },
  },
  result: 'F',
  sources: [POWER_SCREW, WEDGE],
  notes: [
    'Friction scatters by a third either way, and the force with it: a torque is no measurement of the clamp force.',
  ],
  cautions: [
    { says: CLAMP_CAUTION },
    { when: 'l > pi*mu*d_m/cos(beta)', says: 'The screw may run back by itself: lock it.' },
  ],
  related: ['PRESS.SCREWRELEASE', 'CLAMP.FORCE'],
  checks: [
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
      from: 'Shigley, problem 8-4: 15.85 N·m raises 5 kN (printed to four digits)',
    },
    {
      given: { torque: '25 N·m', lead: '4 mm', meanDia: '18 mm', friction: 0.15 },
      expect: '12174.0946478 N',
      within: 1e-9,
      from: 'by hand: 25000/(9 × (4 + π × 0.15 × 18/0.96814764)/(π × 18 − 0.15 × 4/0.96814764))',
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
  ],
});
