import { commonPractice, derived, formula, input } from '../../core/define';
import { pocketLength } from './inputs';

export const springTravel = formula({
  name: 'SPRING.TRAVEL',
  summary: 'Stroke that a spring leaves before it is solid, less a reserve.',
  inputs: [
    pocketLength,
    input('solidLength', 'L_s', 'length', {
      above: '0 mm',
      usual: ['1 mm', '300 mm'],
      says: 'Solid length of the spring, from SPRING.SOLID',
    }),
    input('reserve', 'r', 'ratio', {
      min: 0,
      below: 1,
      default: 0.1,
      usual: [0.05, 0.3],
      says: 'Part of the way from pocket to solid that is kept unused',
    }),
  ],
  refuse: [
    {
      when: 'L_s > L_p',
      argument: 'solidLength',
      says: 'must not be more than {pocketLength}: the spring is solid before it is in its pocket',
    },
  ],
  steps: {
    s_0: { gives: 'length', expr: 'L_p - L_s', says: 'Way from the pocket to solid' },
    s: { gives: 'length', expr: 's_0*(1 - r)', says: 'Less the reserve' },
  },
  result: 's',
  sources: [
    derived('Pocket length less solid length'),
    commonPractice('A tenth of the travel kept as reserve before solid'),
  ],
  notes: [
    'This reserve is a part of the way from pocket to solid that is kept unused. SPRING.OVERRUN is the other kind: travel left over travel used, counted from the free length.',
    'Take shims off the pocket length first. Compare with the lift that SEAT.LIFT asks for and with SHOULDER.TRAVEL: the shorter one stops the insert, and it should not be the spring.',
  ],
  cautions: [{ says: 'Stop the stroke by a shoulder or a plate, never by the solid spring.' }],
  related: ['SPRING.OVERRUN', 'SPRING.SOLID', 'SHOULDER.TRAVEL', 'SEAT.LIFT'],
});
