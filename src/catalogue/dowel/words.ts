import type { FamilyWords } from '../../core/familyWords';

export const dowelWords: FamilyWords = {
  title: 'Dowel pins',
  question: 'What does a dowel hold, and what presses it in?',
  also: 'dowel locating pin alignment pin guide pin leader pin',
  functions: {
    'DOWEL.SHEAR': 'shear strength of a pin; side load on dowels; pin shears off; shear pin; double shear',
    'DOWEL.VALUE': 'dowel size; diameter of a dowel pin; dowel length; oversize; tolerance of a pin; m6',
    'DOWEL.PRESS':
      'press fit; interference fit force; arbor press; drive a dowel; push in force; press in a bushing; shrink fit; drive fit',
  },
};
