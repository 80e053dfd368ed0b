import type { FamilyWords } from '../../core/familyWords';

export const heatWords: FamilyWords = {
  title: 'Heat growth',
  question: 'How much does metal grow when it warms?',
  also: 'thermal expansion temperature grow hot warm',
  functions: {
    'HEAT.GROWTH':
      'thermal expansion; how much does steel grow; length when hot; plate gets longer; CTE; contraction; cold',
    'HEAT.MISMATCH':
      'different metals; aluminum in steel; differential expansion; binds when hot; locks up; seizes; two temperatures',
  },
};
