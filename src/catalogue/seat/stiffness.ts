import { derived, formula } from '../../core/define';
import { blockHoldsSeat, evenContact, LAME, roundSeat, roundStiffness, SINK_SCATTER } from './inputs';

export const seatStiffness = formula({
  name: 'SEAT.STIFFNESS',
  summary: 'Axial stiffness of a round tapered seat while the insert is pushed in.',
  inputs: [...roundSeat],
  refuse: [blockHoldsSeat],
  steps: { ...roundStiffness },
  result: 'K',
  valid: [evenContact],
  sources: [derived(LAME)],
  notes: [
    'It does not depend on the radius while the block grows with it. On the way back friction turns round: the seat keeps its sink down to SEAT.SLIDEBACK, then follows a line that is softer by that load over the push.',
    SINK_SCATTER,
  ],
  cautions: [
    {
      says: 'Do not take a tapered seat for a rigid one: in an aluminum block it gives way by tens of micrometres under injection pressure.',
    },
  ],
  related: ['SEAT.SINK', 'SEAT.STEP', 'SEAT.MILLPUSH'],
});
