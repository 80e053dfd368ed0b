import { derived, formula, input } from '../../core/define';
import { blockHoldsSeat, evenContact, injectionPush, LAME, roundSeat, roundStiffness } from './inputs';

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
  ],
  refuse: [blockHoldsSeat],
  steps: {
    ...roundStiffness,
    s: {
      gives: 'length',
      expr: '(F_i - F_m)/K',
      says: 'Sink in injection less sink in milling; positive: the insert ends below the face',
    },
  },
  result: 's',
  valid: [evenContact],
  sources: [derived(LAME)],
  notes: [
    'Milling flush in place cancels the sink only where the milling push equals the push of injection. Choose the preload of the ' +
      'screw that holds the insert while milling so that the step is zero or on the side that the part can bear: SEAT.MILLPUSH gives ' +
      'that push, and SCREW.TORQUE the torque that makes it.',
    'The step is signed. Positive: the insert ends below the face and leaves a raised pad on the part; negative: it stands proud and leaves a dent.',
  ],
  cautions: [
    {
      when: 'F_m > F_i and mu >= tan(alpha)',
      says: 'Self-locking: after milling the insert stays sunk by the larger push, so this step appears only once the insert has been pushed out and seated again.',
    },
    { says: 'Cycle the insert a few times at full push before the last cut: a new seat still beds in.' },
    { says: 'Stay within what the holding screw and its thread bear: see SCREW.MAXTORQUE.' },
  ],
  related: ['SEAT.MILLPUSH', 'SEAT.SINK', 'FLUSH.STOCK'],
});
