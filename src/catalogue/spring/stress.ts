import { choice, formula, fromMemory, secondHand } from '../../core/define';
import {
  coilsClearWire,
  CURVATURE_FACTORS,
  FACTOR_SAYS,
  force,
  meanDia,
  springIndex,
  STORED_ENERGY,
  wire,
} from './inputs';

export const springStress = formula({
  name: 'SPRING.STRESS',
  summary: 'Shear stress in the wire of a helical spring.',
  inputs: [
    force,
    wire,
    meanDia,
    choice('factor', CURVATURE_FACTORS, { default: 'bergstrasser', says: FACTOR_SAYS }),
  ],
  refuse: [coilsClearWire],
  steps: {
    ...springIndex,
    K: {
      gives: 'ratio',
      by: 'factor',
      cases: {
        bergstrasser: '(4*C + 2)/(4*C - 3)',
        wahl: '(4*C - 1)/(4*C - 4) + 0.615/C',
        direct: '1 + 0.5/C',
      },
      says: 'Rise of the stress at the inside of the coil',
    },
    tau: { gives: 'pressure', expr: 'K*8*F*D/(pi*d^3)', says: 'Torsion of the wire, with the factor' },
  },
  result: 'tau',
  valid: [
    {
      holds: 'C >= 4 and C <= 12',
      says: 'The spring index D/d is not between 4 and 12: below it the wire is hard to coil and the factors differ, above it the spring tangles and buckles.',
    },
  ],
  sources: [
    secondHand(
      'Shigley’s Mechanical Engineering Design, by the solution of problem 10-3 read at a public page',
    ),
    fromMemory('EN 13906-1: its factor (w + 0.5)/(w − 0.75) is the same as Bergsträsser’s'),
  ],
  notes: [
    'Static load: direct shear is enough, Bergsträsser on the safe side. Many cycles: Bergsträsser or Wahl, which differ by a percent.',
    'SPRING.MARGIN compares it with the yield of the wire in torsion, a part of SPRING.STRENGTH.',
  ],
  cautions: [{ says: STORED_ENERGY }],
  related: ['SPRING.MARGIN', 'SPRING.STRENGTH', 'SPRING.RATE'],
});
