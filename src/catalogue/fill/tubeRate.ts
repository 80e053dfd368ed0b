import { formula } from '../../core/define';
import {
  CONSTANTS,
  flow,
  powerIndexOrNewtonian,
  RABINOWITSCH,
  radius,
  RATE_CEILING,
  rateCeiling,
  tubeShear,
} from './inputs';

export const fillTubeRate = formula({
  name: 'FILL.TUBERATE',
  summary: 'True shear rate at the wall of a round runner, nozzle or pin gate.',
  inputs: [flow, radius, powerIndexOrNewtonian],
  constants: rateCeiling,
  steps: tubeShear,
  result: 'gamma_w',
  sources: [RABINOWITSCH],
  notes: [
    'With the index left out it is the apparent rate, which flow curves are often drawn against.',
    CONSTANTS,
  ],
  cautions: [RATE_CEILING],
  related: ['FILL.TUBEDROP', 'FILL.SLITRATE', 'FILL.VISCOSITY', 'FILL.RUNNER'],
});
