import type { FamilyWords } from '../../core/familyWords';

export const costWords: FamilyWords = {
  title: 'Time and cost',
  question: 'What does a part cost, and when does a better mold pay?',
  also: 'price money quote estimate budget economics',
  functions: {
    'COST.CYCLE': 'cycle time; seconds per shot; parts per hour; total cycle; production rate',
    'COST.PART': 'price per part; part cost; piece price; cost each; quote; unit cost; scrap',
    'COST.BREAKEVEN':
      'break even quantity; which mold is cheaper; aluminum or steel mold; payback; worth it; 3D print or mold; amortize',
  },
};
