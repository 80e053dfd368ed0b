import { formula, input } from '../../core/define';
import { freeLength, HOOKE, rate, STORED_ENERGY } from './inputs';

export const springForce = formula({
  name: 'SPRING.FORCE',
  summary: 'Force of a spring at a length; 0 where it is longer than free.',
  inputs: [
    rate,
    freeLength,
    input('length', 'L', 'length', {
      above: '0 mm',
      usual: ['2 mm', '400 mm'],
      says: 'Length that the spring is held at',
    }),
  ],
  steps: {
    x: { gives: 'length', expr: 'L_0 - L', says: 'Compression' },
    F: { gives: 'force', expr: 'k*max(0, x)', says: 'Hooke’s law; a loose spring does not push' },
  },
  result: 'F',
  valid: [{ holds: 'x >= 0', says: 'The length is more than the free length: the spring is loose.' }],
  sources: [HOOKE],
  notes: [
    'The length must be above the solid length, SPRING.SOLID: no equation tells what a spring pressed solid bears. The last tenth before solid is stiffer than the rate.',
  ],
  cautions: [
    {
      when: 'x > 0.8*L_0',
      says: 'Compressed by more than four fifths of its free length: most springs are solid before that. See SPRING.SOLID.',
    },
    { says: STORED_ENERGY },
  ],
  related: ['SPRING.LENGTH', 'SPRING.PRELOAD', 'SPRING.RATE'],
});
