import { choice, formula, input } from '../../core/define';
import { ofThread, threadWith } from '../threads';
import {
  engagement,
  FULL_THREAD_ONLY,
  oneTurn,
  sharedEngagement,
  shearAreas,
  STRIPPING_SOURCES,
  stripping,
} from './inputs';

export const threadStrip = formula({
  name: 'THREAD.STRIP',
  summary: 'Load that strips the thread of a hole or a screw.',
  inputs: [
    threadWith({ d: ofThread.d, ...stripping }),
    engagement,
    input('shearStrength', 'tau', 'pressure', {
      above: '0 MPa',
      usual: ['25 MPa', '900 MPa'],
      says: 'Shear strength of the thread that strips: 0.5 to 0.6 of its tensile strength',
    }),
    choice('which', ['internal', 'external'], {
      default: 'internal',
      says: 'Thread that strips: of the hole (internal), as in soft plates, or of the screw (external)',
    }),
  ],
  steps: {
    ...shearAreas,
    F: {
      gives: 'force',
      by: 'which',
      cases: { internal: 'tau*a_n*L', external: 'tau*a_s*L' },
      says: 'Shear strength on the area engaged',
    },
  },
  result: 'F',
  valid: [oneTurn, sharedEngagement],
  sources: STRIPPING_SOURCES,
  notes: [
    FULL_THREAD_ONLY,
    'A capacity: for a margin divide by your load.',
    'In aluminum under a hardened screw the hole strips first: that is the normal case of mold plates.',
  ],
  cautions: [
    {
      says:
        'This is the load at which the thread fails, not one to work at: the threads do not share it evenly. ' +
        'Take a margin of at least 1.5, and 3 or more where a plate under pressure or a spring hangs on it.',
    },
  ],
  related: ['THREAD.ENGAGE', 'SCREW.MAXTORQUE', 'THREAD.LIMIT'],
});
