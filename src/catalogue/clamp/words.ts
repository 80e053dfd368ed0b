import type { FamilyWords } from '../../core/familyWords';

export const clampWords: FamilyWords = {
  title: 'Clamping',
  question: 'Does the press hold the mold shut?',
  also: 'tonnage lock close parting line flash hold shut',
  functions: {
    'CLAMP.FORCE': 'clamp force needed; force to hold the mold closed; locking force; hold against injection',
    'CLAMP.TONNAGE': 'tons; how many tons; press size; tonnage of machine',
    'CLAMP.MAXAREA':
      'largest part; biggest projected area; how big a part can it hold; maximum footprint; cavities that fit the clamp',
    'CLAMP.PRESSURE': 'cavity pressure; what pressure to design for; pressure inside the mold; packing',
    'CLAMP.SPARE': 'safety factor of the clamp; enough clamp; will it flash; blows open',
    'CLAMP.GAP': 'mold opens; parting line gap; breathing; flash thickness; clamp stretch; mold blows open',
  },
};
