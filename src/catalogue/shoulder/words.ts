import type { FamilyWords } from '../../core/familyWords';

export const shoulderWords: FamilyWords = {
  title: 'Shoulder screws',
  question: 'Which shoulder screw, and how far does the plate travel?',
  also: 'shoulder bolt stripper bolt stripper plate limit screw',
  functions: {
    'SHOULDER.VALUE':
      'shoulder bolt dimensions; head of a shoulder screw; thread of a shoulder bolt; shoulder diameter',
    'SHOULDER.TRAVEL':
      'how far the plate moves; travel limit; stroke of a stripper plate; free play; stop; slop',
  },
};
