import { formula, input } from '../../core/define';
import { ofThread, threadWith } from '../threads';
import { elastic, SCATTER, strongest, TORQUE_FACTOR, torqueFactor } from './inputs';

export const screwTorque = formula({
  name: 'SCREW.TORQUE',
  summary: 'Tightening torque for a wanted preload.',
  inputs: [
    threadWith({ d: ofThread.d, A_s: ofThread.A_s }),
    input('preload', 'F', 'force', {
      min: '0 N',
      usual: ['100 N', '300 kN'],
      says: 'Preload wanted in the screw',
    }),
    torqueFactor,
  ],
  constants: strongest,
  steps: {
    T: { gives: 'torque', expr: 'K*d*F', says: 'Friction of thread and head takes nine tenths of it' },
  },
  result: 'T',
  valid: [elastic],
  sources: [TORQUE_FACTOR],
  notes: [
    'SCREW.CLASSLOAD gives the preload that a strength class bears, SCREW.MAXTORQUE the torque that does not strip the plate.',
  ],
  cautions: [
    SCATTER,
    {
      says: 'In aluminum and other soft plates the tapped hole sets the limit, not the screw: ask SCREW.MAXTORQUE first.',
    },
  ],
  related: ['SCREW.PRELOAD', 'SCREW.MAXTORQUE', 'SCREW.CLASSLOAD'],
});
