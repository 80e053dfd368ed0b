import { commonPractice, formula, input } from '../../core/define';
import {
  engagement,
  FULL_THREAD_ONLY,
  nutStrength,
  oneTurn,
  screwStrength,
  sharedEngagement,
  shearAreas,
  STRIPPING_SOURCES,
  stripping,
} from '../thread/inputs';
import { ofThread, threadWith } from '../threads';
import { SCATTER, TORQUE_FACTOR, torqueFactor } from './inputs';

export const screwMaxTorque = formula({
  name: 'SCREW.MAXTORQUE',
  summary: 'Largest tightening torque that neither overloads the screw nor strips the tapped hole.',
  inputs: [
    threadWith({ d: ofThread.d, A_s: ofThread.A_s, ...stripping }),
    engagement,
    screwStrength,
    nutStrength,
    torqueFactor,
    input('margin', 'S', 'ratio', {
      min: 1,
      default: 1.5,
      usual: [1, 3],
      says: 'Margin on the stripping load of the hole',
    }),
  ],
  steps: {
    ...shearAreas,
    F_s: {
      gives: 'force',
      expr: '0.75*0.8*R_s*A_s',
      says: 'What the screw bears: 0.75 of a proof load of 0.8 times its tensile strength',
    },
    F_n: {
      gives: 'force',
      expr: '0.5*R_n*a_n*L/S',
      says: 'What the hole’s thread bears: half its tensile strength in shear, with the margin',
    },
    F: { gives: 'force', expr: 'min(F_s, F_n)', says: 'The weaker of the two' },
    T: { gives: 'torque', expr: 'K*d*F', says: 'Torque that makes this preload' },
  },
  result: 'T',
  valid: [
    oneTurn,
    sharedEngagement,
    {
      holds: '0.5*R_s*a_s*L >= S*F',
      says: 'The screw’s own thread strips before that, with the margin: engage it longer.',
    },
  ],
  sources: [
    ...STRIPPING_SOURCES,
    TORQUE_FACTOR,
    commonPractice(
      'Preload of 0.75 of the proof load for screws that are taken out again; proof about 0.8 of tensile strength; shear half of tensile strength',
    ),
  ],
  notes: [
    FULL_THREAD_ONLY,
    'The margin of 1.5 covers the scatter of the preload and a worn thread; it is on the hole only. For a hole that is used for every part, as of a clamp, take 2 or more, or a thread insert.',
  ],
  cautions: [
    {
      when: 'F_n < F_s',
      says: 'The thread in the plate sets this torque, not the screw: the torque of a table for the screw is too much for it.',
    },
    SCATTER,
  ],
  related: ['SCREW.TORQUE', 'THREAD.ENGAGE', 'THREAD.STRIP', 'SCREW.CLASSLOAD'],
});
