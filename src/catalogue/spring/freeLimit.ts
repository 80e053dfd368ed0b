import { formula, secondHand } from '../../core/define';
import { EN_BUCKLING, meanDia, seating, seatingIsKnown } from './inputs';
import { elasticMaterial, STEEL_G } from './materials';

export const springFreeLimit = formula({
  name: 'SPRING.FREELIMIT',
  summary: 'Longest free length of a compression spring that never buckles.',
  inputs: [
    meanDia,
    seating,
    elasticMaterial(
      STEEL_G,
      'Material of the wire; beside a shear modulus Young’s modulus is that of steel, 206 GPa',
    ),
  ],
  steps: {
    L_0: {
      gives: 'length',
      expr: 'pi*D/nu*sqrt((1 - gamma)/(0.5 + gamma))',
      says: 'Where the root of the buckling equation vanishes',
    },
  },
  result: 'L_0',
  valid: [seatingIsKnown],
  sources: [
    EN_BUCKLING,
    secondHand(
      'Shigley’s Mechanical Engineering Design, by solutions of its problems read at a public page: for steel stable below 2.63 D/α',
    ),
  ],
  notes: [
    'With the usual moduli of spring steel it is 2.58 D over the seating, 2 % on the safe side of the book’s 2.63.',
    'Where the modulus of a wire depends on its size, the size that buckles first is taken.',
  ],
  cautions: [{ says: 'A longer spring is not lost: guide it on a rod or in a bore, or see SPRING.BUCKLE.' }],
  related: ['SPRING.BUCKLE'],
});
