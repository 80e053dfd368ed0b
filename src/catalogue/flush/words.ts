import type { FamilyWords } from '../../core/familyWords';

export const flushWords: FamilyWords = {
  title: 'Flush finishing',
  question: 'How much stock is left for finishing an insert flush in its block?',
  also: 'mill in place; finish in the block; cut flush; face off; blend',
  functions: {
    'FLUSH.STOCK':
      'how much material to leave; allowance; extra height; leave on for finishing; machining allowance; grinding stock; oversize',
    'FLUSH.PASSES': 'how many cuts; number of roughing passes; depth of cut per pass; steps to take it down',
  },
};
