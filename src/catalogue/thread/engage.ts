import { commonPractice, derived, formula, input } from '../../core/define';
import { ofThread, threadWith } from '../threads';
import {
  FULL_THREAD_ONLY,
  nutStrength,
  screwStrength,
  sharedEngagement,
  shearAreas,
  STRIPPING_SOURCES,
  stripping,
} from './inputs';

export const threadEngage = formula({
  name: 'THREAD.ENGAGE',
  summary: 'Length of engagement at which the screw breaks before either thread strips.',
  inputs: [
    threadWith({ d: ofThread.d, A_s: ofThread.A_s, ...stripping }),
    screwStrength,
    nutStrength,
    input('margin', 'S', 'ratio', {
      above: 0,
      default: 1,
      usual: [1, 2],
      says: 'Margin on the length',
    }),
  ],
  steps: {
    ...shearAreas,
    L_s: {
      gives: 'length',
      expr: '2*A_s/a_s',
      says: 'So that the screw’s own thread holds; a thread shears at half its tensile strength',
    },
    L_n: { gives: 'length', expr: '2*A_s/a_n*R_s/R_n', says: 'So that the hole’s thread holds' },
    L: { gives: 'length', expr: 'S*max(L_s, L_n)', says: 'The longer of the two, with the margin' },
  },
  result: 'L',
  valid: [sharedEngagement],
  sources: [
    ...STRIPPING_SOURCES,
    derived('Stress area of ISO 898-1 or ASME B1.1'),
    commonPractice('Shear strength taken as half the tensile strength, on the safe side of 0.577'),
  ],
  notes: [
    FULL_THREAD_ONLY,
    'A screw that breaks is seen and drilled out; a stripped thread spoils the plate. 1.5 diameters in aluminum are too short for a screw of 180 ksi.',
  ],
  cautions: [
    {
      when: 'L_n > L_s',
      says: 'The plate’s thread decides. Where there is no room for this length, tighten to what SCREW.MAXTORQUE allows, or set a thread insert.',
    },
  ],
  related: ['THREAD.STRIP', 'SCREW.MAXTORQUE', 'TAP.DEPTH'],
});
