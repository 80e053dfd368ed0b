import { formula, input } from '../../core/define';
import { ofThread, threadWith } from '../threads';
import { elastic, SCATTER, strongest, TORQUE_FACTOR, torqueFactor } from './inputs';

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
  constants: strongest,
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
});
