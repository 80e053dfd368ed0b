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
  tubeShear,
  wallStress,
} from './inputs';

export const fillTubeDrop = formula({
  name: 'FILL.TUBEDROP',
  summary: 'Pressure that a power-law melt loses along a round runner or nozzle.',
  inputs: [flow, radius, length, consistency, powerIndex],
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
  checks: [
    {
      given: {
        flow: '6 cm³/s',
        radius: '2.5 mm',
        length: '60 mm',
        consistency: '9000 Pa·s^n',
        powerIndex: 0.35,
      },
      expect: '4.31208443061 MPa',
      within: 1e-10,
      from: 'by hand: 2 × 9000 × 715.924406868^0.35 × 60/2.5 Pa',
    },
    {
      given: {
        flow: '5 cm³/s',
        radius: '2 mm',
        length: '50 mm',
        consistency: '200 Pa·s^n',
        powerIndex: 1,
      },
      expect: '7.95774715459 MPa',
      within: 1e-11,
      from: 'Hagen–Poiseuille law for a Newtonian melt: 8 µ L Q/(π R⁴) = 8 × 200 × 0.05 × 5e-6/(π × 0.002⁴) Pa',
      limit: true,
    },
  ],
});
