import type { FamilyWords } from '../../core/familyWords';

export const shrinkWords: FamilyWords = {
  title: 'Shrinkage',
  question: 'What size must the cavity be for the part to come out right?',
  also: 'shrink allowance contraction part size mold size',
  functions: {
    'SHRINK.CAVITY':
      'scale up the cavity; mold dimension from the part print; cut oversize; shrink factor; enlarge the model; steel size',
    'SHRINK.PART': 'part comes out how big; molded size; part dimension from the cavity; final size',
    'SHRINK.SCATTER':
      'shrinkage variation; size range of molded parts; part tolerance; biggest and smallest part',
  },
};
