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
  checks: [
    {
      given: {
        bend: '0.02 mm',
        cutterDia: '6 mm',
        fluteLength: '15 mm',
        neckDia: '5.5 mm',
        neckLength: '25 mm',
        modulus: '580000 MPa',
      },
      expect: '23.5262065024 N',
      within: 1e-10,
      from: 'by hand: 0.02 × 3 × 580000/[(40³ − 15³)/44.918025 + 15³/26.057626]',
    },
    {
      given: {
        bend: '0.0340046322350866 mm',
        cutterDia: '6 mm',
        fluteLength: '15 mm',
        neckDia: '5.5 mm',
        neckLength: '25 mm',
      },
      expect: '40 N',
      within: 1e-12,
      from: 'inverse of CUT.BEND under 40 N',
      limit: true,
    },
  ],
});
