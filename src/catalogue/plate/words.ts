import type { FamilyWords } from '../../core/familyWords';

export const plateWords: FamilyWords = {
  title: 'Plates and walls',
  question: 'How much do plates, walls and pillars give under pressure?',
  also: 'deflection bend flex bow backing plate mold base thickness stiffness',
  functions: {
    'PLATE.SAG':
      'plate deflection; support plate bends; bow between rails; flex; beam; parallels; backing plate',
    'PLATE.THICKNESS':
      'how thick a plate; plate thickness needed; minimum thickness; backing plate thickness',
    'PLATE.PILLAR':
      'support pillar; support post; column compression; pillars squash; how many pillars; post under the plate',
    'PLATE.WALL':
      'cavity side wall deflection; wall bulges; wall thickness of the block; side wall flex; how thick a cavity wall; flash at the side',
    'PLATE.ROUND': 'round plate deflection; circular disk; round floor; diaphragm; thin bottom',
    'PLATE.FLOOR':
      'pocket floor thickness; rectangular bottom; cavity bottom deflection; plate on four sides; thin floor',
    'PLATE.RING':
      'round cavity grows; ring expansion; thick cylinder; cavity gets bigger under pressure; round block',
  },
};
