import { derived, formula, input } from '../../core/define';
import {
  blockHoldsSeat,
  evenContact,
  HYSTERESIS,
  injectionPush,
  LAME,
  roundSeat,
  roundStiffness,
  roundStrength,
  roundStress,
  seatingPush,
  SINK_SCATTER,
  slidingBack,
} from './inputs';

export const seatStep = formula({
  name: 'SEAT.STEP',
  summary:
    'Witness step that injection leaves at a face milled flush under a push: sink in injection less sink in milling.',
  inputs: [
    injectionPush,
    input('millingPush', 'F_m', 'force', {
      min: '0 N',
      usual: ['0 N', '50 kN'],
      says: 'Axial push that holds the insert while its face is milled',
    }),
    ...roundSeat,
    seatingPush,
  ],
  refuse: [blockHoldsSeat],
  steps: {
    ...roundStiffness,
    ...slidingBack,
    x_m: {
      gives: 'length',
      expr: 'max(F_m/K, t > 0 ? min(F_s/K, F_m/(K*t)) : F_s/K)',
      says: 'Sink in milling: pressed down by the milling push, or held where the seating push left it until it slides back',
    },
    s: {
      gives: 'length',
      expr: 'F_i/K - x_m',
      says: 'Sink in injection less sink in milling; positive: the insert ends below the face',
    },
    ...roundStress('max(F_i, F_m, F_s)'),
  },
  result: 's',
  strength: roundStrength,
  valid: [evenContact],
  sources: [derived(LAME), HYSTERESIS],
  notes: [
    'Milling flush in place cancels the sink only where the insert is as far down while it is milled as it will be while it molds. Two ways lead there: ' +
      'mill it under the push of injection, or drive it home with that push first. A seat that locks then stays there without any push; one that does not ' +
      'slides back as the push falls, and SEAT.MILLPUSH gives the push that holds it.',
    'Without seatingPush the insert counts as set in by the milling push alone. If the push fell below the milling push in between, that lower one is the seating push. ' +
      'A push-out insert is seated anew at every shot.',
    'The step is signed. Positive: the insert ends below the face and leaves a raised pad on the part; negative: it stands proud and leaves a dent.',
    SINK_SCATTER,
  ],
  cautions: [
    {
      when: 't <= 0 and x_m*K > F_i*(1 + 1e-9)',
      says: 'Self-locking: after milling the insert stays sunk by the larger push, so there is no step until it has been pushed out and seated again; then this one appears.',
    },
    { says: 'Cycle the insert a few times at full push before the last cut: a new seat still beds in.' },
    { says: 'Stay within what the holding screw and its thread bear: see SCREW.MAXTORQUE.' },
  ],
  related: ['SEAT.MILLPUSH', 'SEAT.SINK', 'FLUSH.STOCK'],
});
