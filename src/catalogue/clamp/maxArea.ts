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
});
