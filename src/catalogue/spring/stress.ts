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
  checks: [
    {
      given: { force: '167.9 N', wire: '2.5 mm', meanDia: '28.5 mm' },
      expect: '871.2 MPa',
      within: 1e-3,
      from: 'Shigley, 10th edition, problem 10-3: music wire 2.5 mm, outside diameter 31 mm; 0.45 × 1936 MPa at 167.9 N',
    },
    {
      given: { force: '80 N', wire: '2 mm', meanDia: '14 mm', factor: 'wahl' },
      expect: '432.392149 MPa',
      within: 1e-8,
      from: 'by hand: C = 7, K = 27/24 + 0.615/7, × 8 × 80 × 14/(π × 8)',
    },
    {
      given: { force: '1 kN', wire: '4 mm', meanDia: '16 mm', factor: 'direct' },
      expect: '716.197244 MPa',
      within: 1e-8,
      from: 'by hand: 1.125 × 8 × 1000 × 16/(64 π)',
    },
    {
      given: { force: '0.001 N', wire: '1 mm', meanDia: '1000 m' },
      expect: '2546.479089 MPa',
      within: 3e-6,
      from: 'a straight wire in torsion: 16 T/(π d³) with T = F D/2',
      limit: true,
    },
    {
      given: { force: '0 N', wire: '2 mm', meanDia: '14 mm' },
      expect: '0 MPa',
      from: 'no force, no stress',
      limit: true,
    },
  ],
});
