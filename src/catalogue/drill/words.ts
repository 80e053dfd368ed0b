import type { FamilyWords } from '../../core/familyWords';

export const drillWords: FamilyWords = {
  title: 'Drills',
  question: 'What size is a drill, and which drill is nearest?',
  also: 'drill bit twist drill number letter fraction wire gauge',
  functions: {
    'DRILL.SIZE':
      'decimal equivalent; number drill chart; letter drill; convert drill number to inch; how big is a drill; decimal of a fraction',
    'DRILL.NEAREST': 'closest drill; which drill for a diameter; next size up; next smaller bit; drill index',
    'DRILL.POINT': 'point length; drill tip; cone; extra depth for the point; tip angle; 118 degree; 135',
    'DRILL.CSINK':
      'countersink depth; flat head screw; chamfer depth; 82 degree; 90 degree; how deep to countersink; csk',
    'DRILL.FROMSET': 'drills I own; my drill set; pick from my box; what I have in the drawer; in stock',
  },
};
