import { formula } from '../../core/define';
import {
  consistency,
  CONSTANTS,
  flow,
  gap,
  HOT_MELT,
  ISOTHERMAL,
  length,
  powerIndex,
  RABINOWITSCH,
  RATE_CEILING,
  rateCeiling,
  slitShear,
  wallStress,
  wideSlit,
  width,
} from './inputs';

export const fillSlitDrop = formula({
  name: 'FILL.SLITDROP',
  summary: 'Pressure that a power-law melt loses along a slit.',
  inputs: [flow, width, gap, length, consistency, powerIndex],
  constants: rateCeiling,
  steps: {
    ...slitShear,
    ...wallStress,
    p: { gives: 'pressure', expr: '2*tau_w*L/h', says: 'Force balance of the melt between the two walls' },
  },
  result: 'p',
  valid: [wideSlit],
  sources: [RABINOWITSCH],
  notes: [ISOTHERMAL, CONSTANTS],
  cautions: [RATE_CEILING, HOT_MELT],
  related: ['FILL.REACH', 'FILL.SLITRATE', 'FILL.TUBEDROP', 'FILL.FROZEN', 'PRESS.INJECTION'],
});
