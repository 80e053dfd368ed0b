import type { FamilyWords } from '../../core/familyWords';

export const resinWords: FamilyWords = {
  title: 'Resins',
  question: 'What are the numbers of a resin?',
  also: 'plastic polymer material data sheet thermoplastic ABS PP polypropylene nylon polycarbonate PC HDPE LDPE PE polyethylene PS styrene acetal POM PMMA acrylic TPE PET PBT PA pellets',
  functions: {
    'RESIN.VALUE':
      'plastic properties; melt temperature; mold temperature; barrel temperature; processing temperature; drying; density; specific gravity; shrinkage rate; thermal expansion; heat capacity; flow length',
  },
};
