import { derived, formula, input } from '../../core/define';
import { blockHoldsSeat, evenContact, injectionPush, LAME, roundSeat, roundStiffness } from './inputs';

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
  ],
  refuse: [
    blockHoldsSeat,
    {
      when: 's > z_i*(1 + 1e-9)',
      argument: 'step',
      says: 'must not be more than the whole sink in injection: milled without any push the step is already less',
    },
  ],
  steps: {
    ...roundStiffness,
    z_i: {
      gives: 'length',
      expr: 'F_i/K',
      says: 'Sink in injection, the step of an insert milled without push',
    },
    F_m: { gives: 'force', expr: 'max(0, F_i - K*s)', says: 'What is left of the push for the step wanted' },
  },
  result: 'F_m',
  valid: [evenContact],
  sources: [derived(LAME)],
  notes: [
    'The inverse of SEAT.STEP. For a step of 0 it is the push of injection itself: the seat must be as far down while it is milled as it will be while it molds.',
    'Make this push with the screw that holds the insert from behind: it is the preload of that screw. SCREW.TORQUE gives the torque; expect ± 30 % scatter of the preload.',
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
