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
  checks: [
    {
      given: {
        force: '40 N',
        cutterDia: '6 mm',
        fluteLength: '15 mm',
        neckDia: '5.5 mm',
        neckLength: '25 mm',
        modulus: '580000 MPa',
      },
      expect: '0.0340046322351 mm',
      within: 1e-10,
      from: 'by hand: 40/(3 × 580000) × [(40³ − 15³)/44.918025 + 15³/26.057626], I = π d⁴/64 with d = 5.5 and 4.8',
    },
    {
      given: { force: '10 lbf', cutterDia: '0.25 in', fluteLength: '0.75 in', modulus: '84 Mpsi' },
      expect: '0.000213153941641 in',
      within: 1e-10,
      from: 'by hand: 10 × 0.75³/(3 × 84e6 × π × 0.2⁴/64)',
    },
    {
      given: {
        force: '50 N',
        cutterDia: '6 mm',
        fluteLength: '10 mm',
        neckDia: '4.8 mm',
        neckLength: '20 mm',
        modulus: '580000 MPa',
      },
      expect: '0.029774856152 mm',
      within: 1e-10,
      from: 'a neck of 0.8 D is a uniform bar of the whole length: F L³/(3 E I)',
      limit: true,
    },
  ],
});
