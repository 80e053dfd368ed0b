import { formula, input } from '../../core/define';
import { CLAMP_CAUTION, clampForceInput, MARGIN, margin, OPENING } from './inputs';

export const clampMaxArea = formula({
  name: 'CLAMP.MAXAREA',
  summary: 'Largest projected area that a clamp force holds shut.',
  inputs: [
    clampForceInput,
    input('cavityPressure', 'p', 'pressure', {
      above: '0 MPa',
      usual: ['1 MPa', '150 MPa'],
      says: 'Mean pressure in the cavity',
    }),
    margin,
  ],
  steps: { A: { gives: 'area', expr: 'F/(S*p)', says: 'Clamp force, less its margin, over the pressure' } },
  result: 'A',
  sources: [OPENING, MARGIN],
  cautions: [{ says: CLAMP_CAUTION }],
  related: ['CLAMP.FORCE', 'CLAMP.SPARE'],
  checks: [
    {
      given: { clampForce: '8 kN', cavityPressure: '15 MPa', margin: 1.25 },
      expect: '426.6667 mm²',
      within: 1e-6,
      from: 'by hand: 8000/(1.25 × 15)',
    },
    {
      given: { clampForce: '4000 lbf', cavityPressure: '1400 psi', margin: 1.25 },
      expect: '2.28571428571 in²',
      within: 1e-9,
      from: 'by hand: 4000/1750',
    },
    {
      given: { clampForce: '10 kN', cavityPressure: '10 MPa', margin: 1 },
      expect: '1000 mm²',
      within: 1e-12,
      from: 'without a margin force over pressure',
      limit: true,
    },
  ],
});
