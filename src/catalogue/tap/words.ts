import type { FamilyWords } from '../../core/familyWords';

export const tapWords: FamilyWords = {
  title: 'Tapping',
  question: 'What drill, depth, torque and feed does a tapped hole take?',
  also: 'tapped hole thread hole drill and tap',
  functions: {
    'TAP.DRILL':
      'tap drill size; pilot hole; what size drill for a tap; hole before tapping; roll form tap; thread forming; wire insert; STI; thread repair; stripped hole',
    'TAP.DRILLNAME':
      'drill number or letter for a tap; tap drill chart; which bit; drill bit for a thread; number drill',
    'TAP.PERCENT':
      'thread percentage; percent of full thread from the drill used; thread height; engagement percent; wrong drill; 75 percent',
    'TAP.DEPTH':
      'how deep to drill a blind hole; bottoming tap; hole depth for thread; drill depth; bottom of the hole',
    'TAP.TRAVEL': 'how far to run the tap; through hole tapping; Z depth of the tap; break through',
    'TAP.TORQUE': 'tap breaks; snapped tap; broken tap; twisting; power to tap; how hard to turn',
    'TAP.FEED':
      'tapping feed; rigid tapping; feed from pitch; IPM for tapping; synchronous; G84; feed per revolution',
    'TAP.PIPE':
      'pipe thread drill; NPT; BSP; water fitting; cooling line fitting; air fitting; plug; taper pipe tap',
  },
};
