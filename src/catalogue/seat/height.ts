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
  checks: [
    {
      given: { widthError: '0.01 mm', draft: '5 deg' },
      expect: '0.05715026 mm',
      within: 1e-7,
      from: 'by hand: 0.01/(2 × 0.08748866)',
    },
    {
      given: { widthError: '0.02 mm', draft: '26.56505117707799 deg' },
      expect: '0.02 mm',
      within: 1e-12,
      from: 'at tan α = 1/2 the height moves as much as the width',
    },
    {
      given: { widthError: '0 mm', draft: '3 deg' },
      expect: '0 mm',
      from: 'no error, no change',
      limit: true,
    },
  ],
});
