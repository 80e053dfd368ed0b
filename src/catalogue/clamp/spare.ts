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
});
