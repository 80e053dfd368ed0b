import { formula } from '../../core/define';
import {
  CONSTANTS,
  flow,
  gap,
  powerIndexOrNewtonian,
  RABINOWITSCH,
  RATE_CEILING,
  rateCeiling,
  slitShear,
  wideSlit,
  width,
} from './inputs';

export const fillSlitRate = formula({
  name: 'FILL.SLITRATE',
  summary: 'True shear rate at the wall of a slit: a flat gate, a fan or the part’s own wall.',
  inputs: [flow, width, gap, powerIndexOrNewtonian],
  constants: rateCeiling,
  steps: slitShear,
  result: 'gamma_w',
  valid: [wideSlit],
  sources: [RABINOWITSCH],
  notes: [
    'With the index left out it is the apparent rate, which flow curves are often drawn against.',
    CONSTANTS,
  ],
  cautions: [RATE_CEILING],
  related: ['FILL.SLITDROP', 'FILL.TUBERATE', 'FILL.VISCOSITY', 'FILL.GATE'],
});
