import { derived, formula, input } from '../../core/define';
import { draft } from './inputs';

export const seatClear = formula({
  name: 'SEAT.CLEAR',
  summary: 'Gap that a lift opens on each side of a tapered insert.',
  inputs: [
    input('lift', 'z', 'length', {
      min: '0 mm',
      usual: ['0 mm', '150 mm'],
      says: 'How far the insert is out of its seat',
    }),
    draft,
  ],
  steps: {
    c: {
      gives: 'length',
      expr: 'z*tan(alpha)',
      says: 'Across the push; square to the flank it is smaller by cos α',
    },
  },
  result: 'c',
  sources: [derived('Similar triangles on one flank of the taper')],
  notes: ['The same for the gap that a part or a drafted wall opens when it moves off its core.'],
  related: ['SEAT.LIFT', 'SEAT.HEIGHT'],
});
