import { formula, input } from '../../core/define';
import { freeLength, HOOKE, pocketLength, rate, STORED_ENERGY } from './inputs';

export const springPreload = formula({
  name: 'SPRING.PRELOAD',
  summary: 'Preload of a spring in its pocket, shims included.',
  inputs: [
    rate,
    freeLength,
    pocketLength,
    input('shim', 't', 'length', {
      usual: ['0 mm', '20 mm'],
      default: '0 mm',
      says: 'Shims under the spring, which take length off the pocket',
    }),
  ],
  refuse: [{ when: 't >= L_p', argument: 'shim', says: 'must be less than {pocketLength}' }],
  steps: {
    x: { gives: 'length', expr: 'L_0 - (L_p - t)', says: 'Compression in the closed mold' },
    F: {
      gives: 'force',
      expr: 'k*max(0, x)',
      says: 'Hooke’s law; a spring shorter than its pocket does not push',
    },
  },
  result: 'F',
  valid: [
    { holds: 'x > 0', says: 'The spring is not longer than its pocket: it is loose and gives no preload.' },
  ],
  sources: [HOOKE],
  cautions: [
    {
      when: 'x > 0.8*L_0',
      says: 'Compressed by more than four fifths of its free length: most springs are solid before that. See SPRING.SOLID.',
    },
    { says: STORED_ENERGY },
  ],
  related: ['SPRING.SHIM', 'SPRING.HOLD', 'SPRING.FORCE'],
});
