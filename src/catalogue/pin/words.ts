import type { FamilyWords } from '../../core/familyWords';

export const pinWords: FamilyWords = {
  title: 'Ejector and core pins',
  question: 'Does a pin stay straight, the right length and free of flash?',
  also: 'ejector pin knockout pin core pin',
  functions: {
    'PIN.BUCKLE': 'pin bends; column load; Euler; long thin pin; bows; slender',
    'PIN.STEPBUCKLE': 'stepped pin; shouldered ejector pin; thin tip; two diameters; column',
    'PIN.SIDE':
      'core pin deflection; pin bends from side pressure; melt pushes the pin over; core shift; flow against a pin',
    'PIN.LENGTH': 'cut to length; grind a pin; length under head; how long to make the pin',
    'PIN.STAND': 'pin sticks up; sits below the face; proud; recessed; pin height; warm mold',
    'PIN.VALUE': 'ejector pin size; pin head; head thickness; counterbore for a pin head; standard pin; g6',
    'PIN.FLASH':
      'clearance around a pin; flash in the pin hole; how tight a pin hole; pin bore gap; leaks around',
  },
};
