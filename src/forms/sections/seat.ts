import { holds, calls, type Section } from './section';

export const seat: Section = {
  id: 'seat',
  title: 'Taper seat',
  decide: 'the draft: a steep one sinks less and lets go better; a shallow one centers harder and locks.',
  danger:
    'A seat that lets go at once can throw the insert and what pushes on it: keep hands and face out of its way, and press it out against a stop.',
  inputs: {
    cavityPressure: { first: '20 MPa', note: 'Pressure of the melt in the cavity, as the press makes it.' },
    faceArea: { first: '200 mm²', label: 'Face of the insert', note: 'Area on which the melt presses.' },
    draft: { first: '5 deg', label: 'Draft per side' },
    friction: { first: 0.15, label: 'Friction going in' },
    releaseFriction: { first: 0.2, label: 'Friction coming out' },
    seatRadius: { first: '10 mm', label: 'Mean radius of the seat' },
    seatLength: { first: '12 mm', label: 'Length of contact' },
    blockRadius: { first: '32 mm', label: 'Radius of the block' },
    insertMetal: { first: 'P20', label: 'Metal of the insert' },
    blockMetal: { first: '7075-T6', label: 'Metal of the block' },
    seatingPush: { first: '5.5 kN', label: 'Push that drove it home before' },
    millingPush: { first: '1 kN', label: 'Push while the face is milled' },
    seatWidthTol: { first: '0.005 mm', label: 'Tolerance of the seat width, ±' },
    cutoffTol: { first: '0.01 mm', label: 'Tolerance of the length cut off, ±' },
    touchTol: { first: '0.01 mm', label: 'Tolerance of touching off, ±' },
  },
  parts: [
    calls('SEAT.PUSH', 'seatPush', 'Push of the melt on the insert', 'Everything below rests on it.', {
      pressure: 'cavityPressure',
    }),
    calls('SEAT.FORCE', 'seatForce', 'Force on the seat', 'All around, square to the flank.', {
      push: 'seatPush',
    }),
    calls(
      'SEAT.FREEDRAFT',
      'freeDraft',
      'Draft that lets go by itself',
      'Any smaller draft locks at this friction.',
      {
        friction: 'releaseFriction',
      },
    ),
    calls(
      'SEAT.RELEASE',
      'seatRelease',
      'Push that breaks it loose',
      'With the melt pressure gone; 0: it lets go by itself.',
      {
        push: 'seatPush',
        seatFriction: 'friction',
        releaseFriction: 'releaseFriction',
      },
    ),
    calls(
      'SEAT.SINK',
      'seatSink',
      'Sink under injection',
      'Elastic: expect it within 40 % on a well blued seat.',
      {
        push: 'seatPush',
      },
    ),
    calls(
      'SEAT.STEP',
      'witness',
      'Witness step at the face',
      'Positive: the insert ends below the face. A larger milling push makes it smaller.',
      {
        injectionPush: 'seatPush',
        seatingPush: 'seatingPush',
      },
    ),
    holds(
      'Witness within 0.05 mm',
      'ABS(witness) < MOLD.UNIT.CONVERT(0.05,"mm",units)',
      'If it does not hold: mill with more push, or drive the insert home harder before.',
    ),
    calls(
      'FLUSH.STOCK',
      'flushStock',
      'Stock to leave for milling flush',
      'On top of the sink, which the milling push takes up.',
    ),
  ],
};
