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
});
