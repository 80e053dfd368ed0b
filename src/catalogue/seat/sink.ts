import { derived, formula } from '../../core/define';
import {
  blockHoldsSeat,
  evenContact,
  LAME,
  push,
  roundSeat,
  roundStiffness,
  roundStrength,
  roundStress,
  SINK_SCATTER,
  smallSink,
  stop,
  stopHasGap,
  stoppedSink,
} from './inputs';

export const seatSink = formula({
  name: 'SEAT.SINK',
  summary: 'Axial elastic sink of a round tapered insert under a push, with or without an axial stop.',
  inputs: [push, ...roundSeat, ...stop],
  refuse: [blockHoldsSeat, stopHasGap],
  steps: {
    ...roundStiffness,
    ...stoppedSink,
    ...roundStress('K*z'),
  },
  result: 'z',
  strength: roundStrength,
  valid: [smallSink, evenContact],
  sources: [derived(LAME)],
  notes: [
    'The sink is elastic: it is the witness step that injection pressure leaves at the face, and it grows as 1/(tan α · tan(α+φ)).',
    'A metal given as a number is Young’s modulus; Poisson’s ratio is then taken as 0.3.',
    SINK_SCATTER,
  ],
  cautions: [
    { when: 'mu >= tan(alpha)', says: 'Self-locking: the insert stays sunk when the push is gone.' },
    {
      says: 'The push presses the block apart. The margin counts a round block without holes: corners, screws and cooling beside the pocket take from it.',
    },
  ],
  related: ['SEAT.HOOP', 'SEAT.STEP', 'SEAT.STIFFNESS', 'SEAT.MILLPUSH', 'SEAT.WEDGESINK'],
});
