import { derived, formula, input } from '../../core/define';
import { draft } from './inputs';

export const seatHeight = formula({
  name: 'SEAT.HEIGHT',
  summary: 'Change of the seated height of a tapered insert from an error in width.',
  inputs: [
    input('widthError', 'w', 'length', {
      usual: ['-0.5 mm', '0.5 mm'],
      says: 'Error in width or diameter, insert less pocket; positive: the insert is wide',
    }),
    draft,
  ],
  steps: {
    h: {
      gives: 'length',
      expr: 'w/(2*tan(alpha))',
      says: 'Half the error on each side, along the taper; positive: it stands higher',
    },
  },
  result: 'h',
  sources: [derived('Similar triangles on both flanks of the taper')],
  related: ['FLUSH.STOCK', 'SEAT.HEATDROP', 'SEAT.CLEAR'],
});
