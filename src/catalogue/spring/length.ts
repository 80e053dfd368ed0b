import { formula } from '../../core/define';
import { force, freeLength, HOOKE, rate, STORED_ENERGY } from './inputs';

export const springLength = formula({
  name: 'SPRING.LENGTH',
  summary: 'Length of a spring under a force.',
  inputs: [rate, freeLength, force],
  refuse: [
    { when: 'F >= k*L_0', argument: 'force', says: 'would press a spring of {freeLength}, to nothing' },
  ],
  steps: {
    x: { gives: 'length', expr: 'F/k', says: 'Hooke’s law' },
    L: { gives: 'length', expr: 'L_0 - x', says: 'What is left of the free length' },
  },
  result: 'L',
  sources: [HOOKE],
  notes: ['The inverse of SPRING.FORCE. Compare the length with SPRING.SOLID.'],
  cautions: [
    {
      when: 'L < 0.2*L_0',
      says: 'Pressed to less than a fifth of its free length: most springs are solid before that. See SPRING.SOLID.',
    },
    { says: STORED_ENERGY },
  ],
  related: ['SPRING.FORCE', 'SPRING.SOLID'],
  checks: [
    {
      given: { rate: '8 N/mm', freeLength: '40 mm', force: '96 N' },
      expect: '28 mm',
      within: 1e-12,
      from: 'by hand: 40 − 96/8',
    },
    {
      given: { rate: '25 lbf/in', freeLength: '1.5 in', force: '8 lbf' },
      expect: '1.18 in',
      within: 1e-12,
      from: 'by hand: 1.5 − 8/25',
    },
    {
      given: { rate: '6.5 N/mm', freeLength: '50 mm', force: '78 N' },
      expect: '38 mm',
      within: 1e-12,
      from: 'inverse of SPRING.FORCE: 6.5 × (50 − 38) = 78',
      limit: true,
    },
    {
      given: { rate: '8 N/mm', freeLength: '40 mm', force: '0 N' },
      expect: '40 mm',
      within: 1e-12,
      from: 'unloaded it has its free length',
      limit: true,
    },
  ],
});
