import { formula, input } from '../../core/define';
import { freeLength, HOOKE, pocketLength, rate, STORED_ENERGY } from './inputs';

export const springShim = formula({
  name: 'SPRING.SHIM',
  summary: 'Shim thickness that gives a preload; negative: the pocket must be deeper by that much.',
  inputs: [
    rate,
    freeLength,
    pocketLength,
    input('preload', 'F', 'force', {
      min: '0 N',
      usual: ['1 N', '20 kN'],
      says: 'Preload wanted in the closed mold',
    }),
  ],
  refuse: [
    { when: 'F >= k*L_0', argument: 'preload', says: 'would press a spring of {freeLength}, to nothing' },
  ],
  steps: {
    L: { gives: 'length', expr: 'L_0 - F/k', says: 'Length at which the spring gives the preload' },
    t: { gives: 'length', expr: 'L_p - L', says: 'What must fill the pocket below it' },
  },
  result: 't',
  sources: [HOOKE],
  notes: [
    'A negative shim is no shim: cut the pocket deeper by that much, or take a shorter or softer spring.',
  ],
  cautions: [
    { when: 't < 0', says: 'Negative: the pocket must be cut deeper by this much.' },
    {
      when: 'L < 0.2*L_0',
      says: 'The spring would be pressed to less than a fifth of its free length: most are solid before that.',
    },
    { says: STORED_ENERGY },
  ],
  related: ['SPRING.PRELOAD', 'SPRING.TRAVEL'],
});
