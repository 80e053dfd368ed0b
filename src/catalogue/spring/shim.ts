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
  checks: [
    {
      given: { rate: '8 N/mm', freeLength: '40 mm', pocketLength: '32 mm', preload: '80 N' },
      expect: '2 mm',
      within: 1e-12,
      from: 'by hand: 32 − (40 − 80/8)',
    },
    {
      given: { rate: '25 lbf/in', freeLength: '1.5 in', pocketLength: '1.3 in', preload: '4 lbf' },
      expect: '-0.04 in',
      within: 1e-9,
      from: 'by hand: 1.3 − (1.5 − 4/25)',
    },
    {
      given: { rate: '8 N/mm', freeLength: '40 mm', pocketLength: '40 mm', preload: '0 N' },
      expect: '0 mm',
      from: 'no preload in a pocket of the free length needs no shim',
      limit: true,
    },
  ],
});
