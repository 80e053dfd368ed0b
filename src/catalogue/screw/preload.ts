import { formula, input } from '../../core/define';
import { ofThread, threadWith } from '../threads';
import { elastic, SCATTER, TORQUE_FACTOR, torqueFactor } from './inputs';

export const screwPreload = formula({
  name: 'SCREW.PRELOAD',
  summary: 'Preload that a tightening torque makes.',
  inputs: [
    threadWith({ d: ofThread.d, A_s: ofThread.A_s }),
    input('torque', 'T', 'torque', {
      min: '0 N·m',
      usual: ['0.1 N·m', '1000 N·m'],
      says: 'Tightening torque',
    }),
    torqueFactor,
  ],
  steps: { F: { gives: 'force', expr: 'T/(K*d)', says: 'What friction of thread and head leaves of it' } },
  result: 'F',
  valid: [elastic],
  sources: [TORQUE_FACTOR],
  cautions: [
    SCATTER,
    {
      says: 'Count on the low end where the preload must hold, on the high end where the thread must not strip.',
    },
  ],
  related: ['SCREW.TORQUE', 'SCREW.CLASSLOAD', 'THREAD.STRIP', 'CLAMP.FORCE'],
  checks: [
    {
      given: { thread: '1/2-13', torque: '75 lbf·ft' },
      expect: '9046 lbf',
      within: 0.006,
      from: 'torque table of SAE J429 grade 5 (engineersedge.com): 75 ft-lb, 9046 lbf at K = 0.20',
    },
    {
      given: { thread: 'M8', torque: '18 N·m', k: 0.15 },
      expect: '15 kN',
      within: 1e-12,
      from: 'by hand: 18/(0.15 × 8)',
    },
    {
      given: { thread: '1/4-20', torque: '80 lbf·in' },
      expect: '1600 lbf',
      within: 1e-12,
      from: 'by hand: 80/(0.2 × 0.25)',
    },
    {
      given: { thread: 'M8', torque: '14.4 N·m', k: 0.15 },
      expect: '12 kN',
      within: 1e-12,
      from: 'inverse of SCREW.TORQUE: 12 kN took 14.4 N·m',
      limit: true,
    },
  ],
});
