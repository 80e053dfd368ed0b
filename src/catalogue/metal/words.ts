import type { FamilyWords } from '../../core/familyWords';

export const metalWords: FamilyWords = {
  title: 'Metals',
  question: 'What are the numbers of a metal?',
  also: 'steel aluminum alloy tool steel P20 H13 6061 7075 4140 1045 A2 D2 O1 S7 420 17-4 304 316 brass bronze copper cast iron stainless material data',
  functions: {
    'METAL.VALUE':
      'metal properties; Young’s modulus; elastic modulus; E; Poisson; thermal expansion; CTE; density; weight; conductivity; yield strength; tensile; specific heat; hardness',
    'METAL.MARGIN': 'safety factor; stress against yield; will it yield; permanent bend; strong enough; dent',
  },
};
