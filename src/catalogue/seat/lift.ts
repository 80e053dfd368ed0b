import { derived, formula, input } from '../../core/define';
import { draft } from './inputs';

export const seatLift = formula({
  name: 'SEAT.LIFT',
  summary: 'Lift of a tapered insert that opens a gap on each side.',
  inputs: [
    input('gap', 'c', 'length', {
      min: '0 mm',
      usual: ['0 mm', '10 mm'],
      says: 'Gap wanted per side, across the push',
    }),
    draft,
  ],
  steps: {
    z: { gives: 'length', expr: 'c/tan(alpha)', says: 'Along the taper' },
  },
  result: 'z',
  sources: [derived('Similar triangles on one flank of the taper')],
  notes: ['The inverse of SEAT.CLEAR.'],
  related: ['SEAT.CLEAR', 'SPRING.TRAVEL', 'SHOULDER.TRAVEL'],
});
