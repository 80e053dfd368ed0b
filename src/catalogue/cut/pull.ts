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

export const cutPull = formula({
  name: 'CUT.PULL',
  summary: 'Side force that bends the tip of a cutter by an allowed amount: the inverse of CUT.BEND.',
  inputs: [
    input('bend', 'x', 'length', {
      min: '0 mm',
      usual: ['0.0005 mm', '0.5 mm'],
      says: 'Deflection allowed at the tip',
    }),
    ...reachingCutter,
  ],
  refuse: neckIsWhole,
  steps: {
    ...tipStiffness,
    F: { gives: 'force', expr: 'k*x', says: 'Side force at the tip' },
  },
  result: 'F',
  valid: [slenderCutter],
  sources: CANTILEVER,
  notes: [CANTILEVER_NOTE, 'CUT.FORCE says which chip makes that force.'],
  cautions: [BREAKING],
  related: ['CUT.BEND', 'CUT.FORCE'],
});
