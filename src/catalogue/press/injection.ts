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
  checks: [
    {
      given: { airPressure: '0.6 MPa', airBore: '63 mm', plungerDia: '16 mm', efficiency: 1 },
      expect: '9.30234375 MPa',
      within: 1e-9,
      from: 'by hand: 0.6 × (63/16)²',
    },
    {
      given: { airPressure: '90 psi', airBore: '3.25 in', plungerDia: '0.75 in', efficiency: 0.9 },
      expect: '1521 psi',
      within: 1e-9,
      from: 'by hand: 0.9 × 90 × (3.25/0.75)²',
    },
    {
      given: { airPressure: '0.6 MPa', airBore: '20 mm', plungerDia: '20 mm', efficiency: 1 },
      expect: '0.6 MPa',
      within: 1e-12,
      from: 'equal bores pass the air’s own pressure on',
      limit: true,
    },
  ],
});
