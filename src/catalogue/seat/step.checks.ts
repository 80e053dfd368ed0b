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
      injectionPush: '5 kN',
      millingPush: '600 N',
      draft: '12 deg',
      friction: 0.12,
      seatRadius: '9 mm',
      seatLength: '14 mm',
      blockRadius: '28 mm',
      insertMetal: '210 GPa',
      blockMetal: '68.9 GPa',
      seatingPush: '4 kN',
    },
    expect: '0.0109352007 mm',
    within: 1e-6,
    from: 'the push fell to 0.15 of the seating push, and the insert slid back part of the way: a Coulomb seat loaded in 400 steps, a calculation apart',
  },
  {
    given: {
      injectionPush: '4.5 kN',
      millingPush: '1.5 kN',
      draft: '5 deg',
      friction: 0.15,
      seatRadius: '10 mm',
      seatLength: '12 mm',
      blockRadius: '25 mm',
      insertMetal: 'P20',
      blockMetal: '7075-T6',
      seatingPush: '4.5 kN',
    },
    expect: '0 mm',
    from: 'locked in by the full push of injection before milling, it leaves no step',
    limit: true,
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
