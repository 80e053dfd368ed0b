import { checks } from '../../core/checks';
import { seatWedgeSink } from './wedgeSink';

/** A P20 wedge in a 7075-T6 block. */
const wedge = {
  draft: '5 deg',
  friction: 0.15,
  width: '20 mm',
  breadth: '12 mm',
  seatHeight: '12 mm',
  insertMetal: 'P20',
  blockMetal: '7075-T6',
} as const;

export default checks(seatWedgeSink, [
  {
    given: { ...wedge, push: '3 kN' },
    expect: '0.0942333 mm',
    within: 1e-6,
    from: 'by hand: S = 1500/0.24064674 = 6233.20 N; (S × 20/(205000 × 144) + 1.9 × 0.8911 × S/(71700 × 12))/(2 × 0.08748866)',
  },
  {
    given: {
      push: '0 kN',
      draft: '10 deg',
      friction: 0.1,
      width: '20 mm',
      breadth: '10 mm',
      seatHeight: '10 mm',
      insertMetal: 'P20',
      blockMetal: 'P20',
    },
    expect: '0 mm',
    from: 'without a push nothing sinks',
    limit: true,
  },
  {
    given: { ...wedge, push: '3 kN', stopGap: '0.02 mm' },
    expect: '0.02 mm',
    within: 1e-12,
    from: 'a rigid stop ends the sink at its gap',
    limit: true,
  },
]);
