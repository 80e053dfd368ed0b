import type { FamilyWords } from '../../core/familyWords';

export const edgeWords: FamilyWords = {
  title: 'Edge finding',
  question: 'Where is the edge or the middle of the work?',
  also: 'edge finder wiggler touch off probe zero datum origin locate indicate pick up work offset G54 tramming',
  functions: {
    'EDGE.CENTER': 'edge finder offset; half the tip diameter; edge location; touch off; zero on the edge',
    'EDGE.MIDDLE':
      'center of a hole; center of a bore; midpoint; center of a boss; center of a slot; find center; middle of the block; halfway',
  },
};
