import { formula, input } from '../../core/define';
import {
  consistency,
  CONSTANTS,
  flow,
  gap,
  HOT_MELT,
  ISOTHERMAL,
  powerIndex,
  RABINOWITSCH,
  RATE_CEILING,
  rateCeiling,
  slitWall,
  wallStress,
} from './inputs';

export const fillDiscDrop = formula({
  name: 'FILL.DISCDROP',
  summary: 'Pressure that a power-law melt loses in a round part gated at its center.',
  inputs: [
    flow,
    gap,
    input('innerRadius', 'r_1', 'length', {
      above: '0 mm',
      usual: ['0.3 mm', '50 mm'],
      says: 'Radius at which the melt enters the gap, such as that of the sprue',
    }),
    input('outerRadius', 'r_2', 'length', {
      above: '0 mm',
      usual: ['2 mm', '400 mm'],
      says: 'Radius that the front has reached',
    }),
    consistency,
    powerIndex,
  ],
  refuse: [{ when: 'r_2 < r_1', argument: 'outerRadius', says: 'must not be smaller than {innerRadius}' }],
  constants: rateCeiling,
  steps: {
    gamma_a: {
      gives: 'shearRate',
      expr: '6*Q/(2*pi*r_1*h^2)',
      says: 'Apparent rate at the wall where the melt enters, as if it were Newtonian',
    },
    ...slitWall,
    ...wallStress,
    x: {
      gives: 'ratio',
      expr: '(1 - n)*ln(r_2/r_1)',
      says: 'How far the stress falls on the way out, as an exponent',
    },
    m: {
      gives: 'ratio',
      // The quotient loses its digits near x = 0, where the series has them all.
      expr: 'abs(x) < 0.001 ? 1 + x/2 + x^2/6 + x^3/24 : (exp(x) - 1)/x',
      says: '(eˣ − 1)/x: 1 for a Newtonian melt',
    },
    p: {
      gives: 'pressure',
      expr: '2*tau_w*r_1/h*ln(r_2/r_1)*m',
      says: 'Force balance summed over the radius, the stress falling as r⁻ⁿ',
    },
  },
  result: 'p',
  valid: [
    {
      holds: 'r_1 >= h',
      says: 'The melt enters at a radius smaller than the gap: near the gate it does not yet flow as between plates.',
    },
  ],
  sources: [RABINOWITSCH],
  notes: [ISOTHERMAL, CONSTANTS],
  cautions: [RATE_CEILING, HOT_MELT],
  related: ['FILL.SLITDROP', 'FILL.REACH', 'PRESS.INJECTION', 'CLAMP.PRESSURE'],
});
