import { checks } from '../../core/checks';
import { plug } from './cases';
import { seatStep } from './step';

export default checks(seatStep, [
  {
    given: { ...plug, injectionPush: '3 kN', millingPush: '0 N' },
    expect: '0.0516423 mm',
    within: 1e-5,
    from: 'milled without push the step is the whole sink (by hand from Lamé, as for SEAT.SINK)',
  },
  {
    given: {
      injectionPush: '4 kN',
      millingPush: '4 kN',
      draft: '6 deg',
      friction: 0.12,
      seatRadius: '9 mm',
      seatLength: '14 mm',
      blockRadius: '28 mm',
      insertMetal: 'H13',
      blockMetal: '6061-T6',
    },
    expect: '0 mm',
    from: 'equal pushes leave no step',
    limit: true,
  },
]);
