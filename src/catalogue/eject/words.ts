import type { FamilyWords } from '../../core/familyWords';

export const ejectWords: FamilyWords = {
  title: 'Ejection',
  question: 'What force gets the part off its core, and do the pins mark it?',
  also: 'demold strip knock out stuck part removal sticking undercut bump off snap off',
  functions: {
    'EJECT.GRIP': 'part shrinks onto the core; squeeze; clings; contact pressure; tight on the core',
    'EJECT.STRAIN':
      'shrinkage onto the core; cooling contraction; thermal strain; tightening; stretch over an undercut; how much can it bump off',
    'EJECT.FORCE':
      'stripping force; pull the part off; demolding load; friction on the core; how hard to eject',
    'EJECT.VACUUM': 'suction; vacuum lock; part sucked onto the core; air poppet; deep cup; bucket',
    'EJECT.TOTAL': 'all ejection forces together; sum; safety factor for ejecting; total push',
    'EJECT.PINPRESSURE': 'pin marks; pin push through; stress under the ejector pin; whitening; dents',
    'EJECT.PINSHEAR': 'pin punches through the wall; pokes through; shear around the pin',
    'EJECT.PINCOUNT': 'how many ejector pins; number of knockout pins; enough pins',
  },
};
