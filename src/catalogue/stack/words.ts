import type { FamilyWords } from '../../core/familyWords';

export const stackWords: FamilyWords = {
  title: 'Tolerance stacks',
  question: 'What do the tolerances of a chain add up to?',
  also: 'tolerance stack-up stackup chain dimension accumulation statistics',
  functions: {
    'STACK.WORST': 'worst case; arithmetic; add up tolerances; maximum variation; all at the limit',
    'STACK.RSS': 'root sum square; statistical tolerance; square root; probable',
    'STACK.BENDER': 'inflated RSS; 1.5 factor; benderized; safer statistical',
    'STACK.TRIALS': 'Monte Carlo; simulation; random; histogram; percentile',
    'STACK.SHIFT': 'mean shift; off center process; drift; shifted mean; tool wear; inflated',
    'STACK.YIELD':
      'reject rate; scrap percentage; share in tolerance; how many parts are good; pass rate; bad parts',
    'STACK.CPK':
      'process capability; Cp; Cpk; six sigma; capable; SPC; standard deviation; centered process; drift; control chart',
  },
};
