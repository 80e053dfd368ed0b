import type { FamilyWords } from '../../core/familyWords';

export const threadWords: FamilyWords = {
  title: 'Threads',
  question: 'What are a thread’s sizes, limits and strength?',
  also: 'screw thread UNC UNF metric M6 pitch coarse fine tpi',
  functions: {
    'THREAD.VALUE':
      'pitch; pitch diameter; major diameter; minor diameter; threads per inch; stress area; root; thread dimensions; thread chart; outside diameter',
    'THREAD.LIMIT':
      'class of fit; 2A 2B 6H 6g; go no-go; thread gauge; pitch diameter limits; tolerance; thread tolerance; pitch diameter max min; gauging',
    'THREAD.STRIP':
      'stripped threads; pull out; thread shear; rips out of aluminum; tear out; strip strength; soft plate',
    'THREAD.ENGAGE':
      'thread engagement; how deep must the screw go; how many threads; minimum length of thread; screw length in aluminum; rule of one and a half diameters',
  },
};
