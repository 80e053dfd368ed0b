import { choice, formula, fromMemory, secondHand } from '../../core/define';
import { coilsClearWire, force, meanDia, springIndex, STORED_ENERGY, wire } from './inputs';

export const springStress = formula({
  name: 'SPRING.STRESS',
  summary: 'Shear stress in the wire of a helical spring.',
  inputs: [
    force,
    wire,
    meanDia,
    choice('factor', ['bergstrasser', 'wahl', 'direct'], {
      default: 'bergstrasser',
      says: 'Curvature factor: bergstrasser, wahl, or direct for direct shear alone',
    }),
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
    'Compare with 0.45 of SPRING.STRENGTH for music wire and hard-drawn wire, 0.5 for oil-tempered and alloy wire, 0.35 for 302 stainless, without presetting.',
  ],
  cautions: [{ says: STORED_ENERGY }],
  related: ['SPRING.STRENGTH', 'SPRING.RATE'],
});
