import { formula, input } from '../../core/define';
import {
  BREAKING,
  CANTILEVER,
  CANTILEVER_NOTE,
  neckIsWhole,
  reachingCutter,
  slenderCutter,
  tipStiffness,
} from './inputs';

export const cutBend = formula({
  name: 'CUT.BEND',
  summary: 'Deflection at the tip of a cutter under a side force, flutes and neck together.',
  inputs: [
    input('force', 'F', 'force', { min: '0 N', usual: ['0.1 N', '2 kN'], says: 'Side force at the tip' }),
    ...reachingCutter,
  ],
  refuse: neckIsWhole,
  steps: {
    ...tipStiffness,
    x: { gives: 'length', expr: 'F/k', says: 'Deflection at the tip' },
  },
  result: 'x',
  valid: [
    slenderCutter,
    {
      holds: 'x <= 0.1*L_f',
      says: 'The deflection is more than a tenth of the flutes: far outside small bending, the cutter breaks before.',
    },
  ],
  sources: CANTILEVER,
  notes: [
    CANTILEVER_NOTE,
    'On a wall the deflection leaves the part thicker at the bottom: a second pass without infeed takes most of it off.',
  ],
  cautions: [BREAKING],
  related: ['CUT.PULL', 'CUT.FORCE', 'CUT.REACH'],
});
