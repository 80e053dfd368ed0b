import { commonPractice, derived, formula } from '../../core/define';
import { KIENZLE_SOURCE } from '../../tables/cutting';
import { chipInRange, chipLimits } from '../cut/inputs';
import { ofThread, threadWith } from '../threads';
import { cutMetal, specificForce } from '../workMaterials';

export const tapTorque = formula({
  name: 'TAP.TORQUE',
  summary: 'Torque that a cutting tap needs, to spare small taps.',
  inputs: [threadWith({ d: ofThread.d, P: ofThread.P }), cutMetal],
  constants: chipLimits,
  steps: {
    h: {
      gives: 'length',
      expr: '5*sqrt(3)/16*P/12',
      says: 'Chip of one tooth: depth of thread over three flutes times four pitches of chamfer',
    },
    ...specificForce,
    T: {
      gives: 'torque',
      expr: 'P^2*d*k_c/8',
      says: 'Section of the groove at its mean radius, and a sixth for friction',
    },
  },
  result: 'T',
  valid: [chipInRange],
  sources: [
    commonPractice(
      'Tap makers’ equation P² d k_c/8000, in N·m from mm and MPa; also at lubero.de/en/technology/calculations',
    ),
    derived('Groove of the basic profile: 0.237 P² at 0.45 d'),
    KIENZLE_SOURCE,
  ],
  notes: [
    'For a sharp tap with oil; a worn or dry one needs half as much again. Forming taps need 1.5 to 2 times as much (common practice). In aluminum tap makers count with about half of this.',
    'A metal given as a number is the specific cutting force itself: tap makers count with 800 MPa for aluminum, 2500 for structural and 3600 for tool steel.',
  ],
  cautions: [
    {
      says:
        'An estimate within half and double. Set the clutch of the holder by trial on scrap, from below: below M4 or #8 a tap has little to spare. ' +
        'A tap that breaks throws splinters: wear eye protection.',
    },
  ],
  related: ['TAP.DRILL', 'TAP.FEED', 'CUT.FORCE', 'CUT.SPEED'],
});
