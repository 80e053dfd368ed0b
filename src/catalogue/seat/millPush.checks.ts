import { checks } from '../../core/checks';
import { plug } from './cases';
import { seatMillPush } from './millPush';

export default checks(seatMillPush, [
  {
    given: { ...plug, injectionPush: '3 kN', step: '0.02 mm' },
    expect: '1838.1616 N',
    within: 1e-6,
    from: 'by hand: 3000 − 0.02 × 58091.92, the stiffness by hand as for SEAT.STIFFNESS',
  },
  {
    given: {
      injectionPush: '4500 N',
      step: '0 mm',
      draft: '6 deg',
      friction: 0.15,
      seatRadius: '9 mm',
      seatLength: '14 mm',
      blockRadius: '28 mm',
      insertMetal: 'H13',
      blockMetal: '6061-T6',
    },
    expect: '4500 N',
    within: 1e-12,
    from: 'flush: milled under the push of injection',
    limit: true,
  },
  {
    given: {
      injectionPush: '3600 N',
      step: '0 mm',
      draft: '12 deg',
      friction: 0.12,
      seatRadius: '9 mm',
      seatLength: '14 mm',
      blockRadius: '28 mm',
      insertMetal: '210 GPa',
      blockMetal: '68.9 GPa',
      seatingPush: '4200 N',
    },
    expect: '952.10418 N',
    within: 1e-7,
    from: 'flush after a harder seating push: it slides back to the sink of 3600 N at 3600 × tan(12° − φ)/tan(12° + φ), by hand',
  },
  {
    given: {
      injectionPush: '900 lbf',
      step: '0.00170909327392 in',
      draft: '5 deg',
      friction: 0.15,
      seatRadius: '0.4 in',
      seatLength: '0.5 in',
      blockRadius: '1 in',
      insertMetal: 'P20',
      blockMetal: '7075-T6',
    },
    expect: '300 lbf',
    within: 1e-8,
    from: 'inverse of SEAT.STEP: by hand from Lamé a push of 900 lbf after milling at 300 lbf leaves this step',
    limit: true,
  },
]);
