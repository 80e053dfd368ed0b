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
    'In aluminium under a hardened screw the hole strips first: that is the normal case of mold plates.',
  ],
  cautions: [
    {
      says:
        'This is the load at which the thread fails, not one to work at: the threads do not share it evenly. ' +
        'Take a margin of at least 1.5, and 3 or more where a plate under pressure or a spring hangs on it.',
    },
  ],
  related: ['THREAD.ENGAGE', 'SCREW.MAXTORQUE', 'THREAD.LIMIT'],
  checks: [
    {
      given: { thread: 'M6', engagement: '6 mm', shearStrength: '1 MPa' },
      expect: '73.145 N',
      within: 1e-5,
      from: 'table of thread areas at one diameter engaged, 6H/6g (Bickford, Introduction to the Design and Behavior of Bolted Joints; engineersedge.com): 73.145 mm²',
    },
    {
      given: { thread: 'M12', engagement: '12 mm', shearStrength: '1 MPa', which: 'external' },
      expect: '227.72 N',
      within: 1e-4,
      from: 'the same table: 227.72 mm² for the screw’s thread of M12',
    },
    {
      given: { thread: '1/4-20', engagement: '1 in', shearStrength: '10 ksi' },
      expect: '5389.765 lbf',
      within: 1e-5,
      from: 'FED-STD-H28/2B formula 2a with the ASME B1.1 limits 0.2408 and 0.2224, by hand: π × 0.2408 × 20 × (0.025 + 0.0184/√3)',
    },
    {
      given: { thread: '1/4-20', engagement: '1 in', shearStrength: '10 ksi', which: 'external' },
      expect: '3679.569 lbf',
      within: 1e-5,
      from: 'FED-STD-H28/2B formula 4a with the ASME B1.1 limits 0.207 and 0.2127, by hand: π × 0.207 × 20 × (0.025 + 0.0057/√3)',
    },
    {
      given: { thread: 'M8', engagement: '1e-9 mm', shearStrength: '200 MPa' },
      expect: '0 N',
      within: 1e-4,
      from: 'nothing engaged holds nothing',
      limit: true,
    },
  ],
});
