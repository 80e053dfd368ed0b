import { formula } from '../../core/define';
import {
  AIR_CAUTION,
  AIR_FORCE,
  airBore,
  airPressure,
  efficiency,
  MELT_CAUTION,
  plungerDia,
  SEAL_LOSS,
} from './inputs';

export const pressInjection = formula({
  name: 'PRESS.INJECTION',
  summary: 'Melt pressure that an air-driven plunger can make.',
  inputs: [airPressure, airBore, plungerDia, efficiency],
  steps: {
    F: { gives: 'force', expr: 'eta*p_a*pi*D^2/4', says: 'Force of the air cylinder on the plunger' },
    p: { gives: 'pressure', expr: 'F/(pi*d^2/4)', says: 'Over the plunger’s area' },
  },
  result: 'p',
  valid: [
    {
      holds: 'd < D',
      says: 'The plunger is not smaller than the air bore: the press does not multiply pressure.',
    },
  ],
  sources: [AIR_FORCE, SEAL_LOSS],
  notes: [
    'It bounds the pressure in the cavity: what the table of resins asks for is often more than a bench press can make.',
  ],
  cautions: [{ says: AIR_CAUTION }, { says: MELT_CAUTION }],
  related: ['PRESS.AIRBORE', 'CLAMP.PRESSURE', 'FILL.REACH'],
});
