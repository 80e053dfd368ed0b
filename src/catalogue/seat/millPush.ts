import { derived, formula, input } from '../../core/define';
import {
  blockHoldsSeat,
  evenContact,
  HYSTERESIS,
  injectionPush,
  LAME,
  roundSeat,
  roundStiffness,
  seatingPush,
  SINK_SCATTER,
  slidingBack,
} from './inputs';

export const seatMillPush = formula({
  name: 'SEAT.MILLPUSH',
  summary: 'Push to hold the insert with while its face is milled, so that injection leaves the wanted step.',
  inputs: [
    injectionPush,
    input('step', 's', 'length', {
      usual: ['-0.2 mm', '0.5 mm'],
      says: 'Step wanted at the face in injection, 0 for flush; positive: the insert ends below the face',
    }),
    ...roundSeat,
    seatingPush,
  ],
  refuse: [
    blockHoldsSeat,
    {
      when: 's > z_i*(1 + 1e-9)',
      argument: 'step',
      says: 'must not be more than the whole sink in injection: milled without any push the step is already less',
    },
    {
      when: 't <= 0 and F_s > K*X*(1 + 1e-9)',
      argument: 'step',
      says: 'cannot be had: the seat locks, and the seating push alone leaves a step of {s_s}; push it out and seat it with less',
    },
  ],
  steps: {
    ...roundStiffness,
    z_i: {
      gives: 'length',
      expr: 'F_i/K',
      says: 'Sink in injection, the step of an insert milled without push',
    },
    ...slidingBack,
    s_s: { gives: 'length', expr: 'z_i - F_s/K', says: 'Step that the seating push alone would leave' },
    X: {
      gives: 'length',
      expr: 'max(0, z_i - s)',
      says: 'Sink that the insert must have while it is milled',
    },
    F_m: {
      gives: 'force',
      expr: 't > 0 and X <= F_s/K*(1 + 1e-9) ? K*t*X : K*X',
      says: 'Push that presses it down so far, or the smallest that holds it there after the seating push',
    },
  },
  result: 'F_m',
  valid: [evenContact],
  sources: [derived(LAME), HYSTERESIS],
  notes: [
    'The inverse of SEAT.STEP. Without a seating push and for a step of 0 it is the push of injection itself: the seat must be as far down while it is milled as it will be while it molds.',
    'After a seating push as hard as injection less will do: a seat that does not lock is held by the part of it at which it would slide back. Of a seat that locks this is one answer of many: any push from 0 up to it leaves the same step once the insert is that far down.',
    'Make this push with the screw that holds the insert from behind: it is the preload of that screw. SCREW.TORQUE gives the torque; expect ± 30 % scatter of the preload.',
    SINK_SCATTER,
  ],
  cautions: [
    {
      when: 's < 0',
      says: 'A negative step asks for more push in milling than injection ever makes: see that seat, screw and thread bear it.',
    },
    { says: 'Stay within what the holding screw and its thread bear: see SCREW.MAXTORQUE.' },
    { says: 'Cycle the insert a few times at full push before the last cut: a new seat still beds in.' },
  ],
  related: ['SEAT.STEP', 'SCREW.TORQUE', 'SCREW.MAXTORQUE', 'FLUSH.STOCK'],
});
