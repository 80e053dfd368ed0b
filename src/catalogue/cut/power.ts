import { formula } from '../../core/define';
import { KIENZLE_SOURCE } from '../../tables/cutting';
import { cutMetal, specificForce } from '../workMaterials';
import {
  axialDepth,
  chipInRange,
  chipLimits,
  chipThickness,
  feedRate,
  radialDepth,
  WORK_HOLDING,
} from './inputs';

export const cutPower = formula({
  name: 'CUT.POWER',
  summary: 'Power at the cutter in milling.',
  inputs: [radialDepth, axialDepth, feedRate, cutMetal, chipThickness],
  constants: chipLimits,
  steps: {
    ...specificForce,
    Q: { gives: 'flow', expr: 'a_e*a_p*v_f', says: 'Metal removed in a second' },
    P: { gives: 'power', expr: 'k_c*Q', says: 'Work for the volume removed' },
  },
  result: 'P',
  valid: [chipInRange],
  sources: [KIENZLE_SOURCE],
  notes: [
    'At the cutter: the drive must make a quarter more for its losses (common practice), and a small spindle has its power only near its top speed.',
  ],
  cautions: [{ says: WORK_HOLDING }],
  related: ['CUT.FORCE', 'CUT.CHIP', 'CUT.FEED'],
});
