import type { FamilyWords } from '../../core/familyWords';

export const fitWords: FamilyWords = {
  title: 'Fits and limits',
  question: 'How tight is a fit, and what are its limits?',
  also: 'ISO 286 tolerance clearance interference hole shaft H7',
  functions: {
    'FIT.UPPER': 'upper deviation; ES es; largest size; H7 upper limit',
    'FIT.LOWER': 'lower deviation; EI ei; smallest size; g6 lower limit; fundamental deviation',
    'FIT.LIMITS':
      'limits of size; H7 hole limits; max and min diameter; ream size; bore tolerance; shaft tolerance; go and no go size',
    'FIT.GAP':
      'clearance between shaft and hole; play; press fit interference; slip fit; sliding fit; running fit; looseness; H7/g6',
    'FIT.GRADE': 'IT7; tolerance grade; standard tolerance; how big is IT6; quality',
    'FIT.NAME': 'choose a fit; which fit; fit for a clearance; slip or press; name of the fit',
    'FIT.POSITION': 'true position; position error; GD&T; hole location; off center; XY deviation; CMM',
    'FIT.CLEARHOLE':
      'hole size for position tolerance; floating fastener; fixed fastener; bolt pattern; holes line up; mating holes',
  },
};
