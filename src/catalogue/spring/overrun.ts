import { formula, fromMemory, input } from '../../core/define';
import { freeLength } from './inputs';

export const springOverrun = formula({
  name: 'SPRING.OVERRUN',
  summary: 'Travel that a spring has left before it is solid, over the travel that is used.',
  inputs: [
    freeLength,
    input('solidLength', 'L_s', 'length', {
      above: '0 mm',
      usual: ['1 mm', '300 mm'],
      says: 'Solid length of the spring, from SPRING.SOLID',
    }),
    input('length', 'L', 'length', {
      above: '0 mm',
      usual: ['1 mm', '400 mm'],
      says: 'Shortest length in work',
    }),
  ],
  refuse: [
    { when: 'L_s >= L_0', argument: 'solidLength', says: 'must be less than {freeLength}' },
    { when: 'L < L_s', argument: 'length', says: 'must not be less than {solidLength}: the spring is solid' },
    { when: 'L >= L_0', argument: 'length', says: 'must be less than {freeLength}: no travel is used' },
  ],
  steps: {
    s: { gives: 'length', expr: 'L_0 - L', says: 'Travel used, from the free length' },
    s_r: { gives: 'length', expr: 'L - L_s', says: 'Travel left before it is solid' },
    xi: { gives: 'ratio', expr: 's_r/s', says: 'Fractional overrun to closure' },
  },
  result: 'xi',
  valid: [
    {
      holds: 'xi >= 0.15',
      says: 'Less than 0.15 of the travel is left: coils begin to touch, and the rate is no longer even.',
    },
  ],
  sources: [
    fromMemory(
      'Shigley’s Mechanical Engineering Design, helical compression springs: fractional overrun to closure ξ of at least 0.15',
    ),
  ],
  notes: [
    'This reserve counts from the free length and over the travel used. The reserve of SPRING.TRAVEL is another one: a part of the way from pocket to solid that is kept unused.',
  ],
  cautions: [{ says: 'Stop the stroke by a shoulder or a plate, never by the solid spring.' }],
  related: ['SPRING.TRAVEL', 'SPRING.SOLID', 'SPRING.MARGIN'],
});
