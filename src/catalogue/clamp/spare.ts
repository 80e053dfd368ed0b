import { formula, input } from '../../core/define';
import { CLAMP_CAUTION, clampForceInput, MARGIN, OPENING, openingForce, projectedArea } from './inputs';

export const clampSpare = formula({
  name: 'CLAMP.SPARE',
  summary: 'Clamp force over opening force; below 1 the mold opens.',
  inputs: [
    clampForceInput,
    projectedArea,
    input('cavityPressure', 'p', 'pressure', {
      above: '0 MPa',
      usual: ['1 MPa', '150 MPa'],
      says: 'Mean pressure in the cavity',
    }),
  ],
  steps: { ...openingForce, q: { gives: 'ratio', expr: 'F/F_o', says: 'How many times the clamp holds it' } },
  result: 'q',
  valid: [{ holds: 'q >= 1', says: 'The clamp is weaker than the melt: the mold opens and flashes.' }],
  sources: [OPENING, MARGIN],
  cautions: [
    {
      when: 'q < 1.1',
      says: 'Less than 1.1 times the opening force: the mold breathes and may spray hot melt. Do not run it.',
    },
    { says: CLAMP_CAUTION },
  ],
  related: ['CLAMP.FORCE', 'CLAMP.MAXAREA'],
  checks: [
    {
      given: { clampForce: '15 kN', projectedArea: '1000 mm²', cavityPressure: '10 MPa' },
      expect: 1.5,
      within: 1e-12,
      from: 'by hand: 15000/(1000 × 10)',
    },
    {
      given: { clampForce: '5000 lbf', projectedArea: '2 in²', cavityPressure: '1800 psi' },
      expect: 1.38888888889,
      within: 1e-10,
      from: 'by hand: 5000/3600',
    },
    {
      given: { clampForce: '10 kN', projectedArea: '1000 mm²', cavityPressure: '10 MPa' },
      expect: 1,
      within: 1e-12,
      from: 'a clamp as strong as the melt',
      limit: true,
    },
  ],
});
