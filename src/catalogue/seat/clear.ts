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
  checks: [
    {
      given: { lift: '4 mm', draft: '5 deg' },
      expect: '0.34995465 mm',
      within: 1e-7,
      from: 'by hand: 4 × 0.08748866',
    },
    {
      given: { lift: '1/8 in', draft: '8 deg' },
      expect: '0.0175676 in',
      within: 1e-6,
      from: 'by hand: 0.125 × 0.14054083',
    },
    { given: { lift: '0 mm', draft: '3 deg' }, expect: '0 mm', from: 'seated, there is no gap', limit: true },
  ],
});
