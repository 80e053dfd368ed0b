import { formula } from '../../core/define';
import {
  consistency,
  CONSTANTS,
  flow,
  HOT_MELT,
  ISOTHERMAL,
  length,
  powerIndex,
  RABINOWITSCH,
  radius,
  RATE_CEILING,
  rateCeiling,
  tubeShear,
  wallStress,
} from './inputs';

export const fillTubeDrop = formula({
  name: 'FILL.TUBEDROP',
  summary: 'Pressure that a power-law melt loses along a round runner or nozzle.',
  inputs: [flow, radius, length, consistency, powerIndex],
  constants: rateCeiling,
  steps: {
    ...tubeShear,
    ...wallStress,
    p: { gives: 'pressure', expr: '2*tau_w*L/R', says: 'Force balance of the melt in the tube' },
  },
  result: 'p',
  valid: [
    {
      holds: 'L >= 10*R',
      says: 'Shorter than ten radii: the loss at its entrance, not counted here, can be as large.',
    },
  ],
  sources: [RABINOWITSCH],
  notes: [ISOTHERMAL, CONSTANTS],
  cautions: [RATE_CEILING, HOT_MELT],
  related: ['FILL.RUNNER', 'FILL.TUBERATE', 'FILL.SLITDROP', 'PRESS.INJECTION'],
});
