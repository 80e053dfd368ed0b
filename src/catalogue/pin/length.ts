import { commonPractice, derived, formula, input } from '../../core/define';
import { EXPANDING_STACK, stack, warmStack } from './inputs';

export const pinLength = formula({
  name: 'PIN.LENGTH',
  summary: 'Length to grind an ejector pin to at room temperature, so that it stands right in the warm mold.',
  inputs: [
    stack,
    input('proud', 'e', 'length', {
      usual: ['-0.5 mm', '0.5 mm'],
      says: 'How far it shall stand proud of the face when warm; negative: below it',
    }),
    ...warmStack,
  ],
  refuse: [{ when: 'e <= -S', argument: 'proud', says: 'would grind away all of {stack}' }],
  steps: {
    H: { gives: 'length', expr: 'S*(1 + alpha_pl*DT_pl)', says: 'The stack when warm' },
    L: {
      gives: 'length',
      expr: '(H + e)/(1 + alpha_pin*DT_pin)',
      says: 'The cold pin that reaches there when warm',
    },
  },
  result: 'L',
  sources: [derived(EXPANDING_STACK), commonPractice('Usual call on a drawing: 0 to 0.05 mm proud')],
  notes: [
    'A steel pin grows less than aluminum plates: ground flush at room temperature it ends low in the warm mold and leaves a boss on the part.',
    'A pin that stands proud leaves a dimple, which hides better and cannot catch.',
  ],
  related: ['PIN.STAND', 'HEAT.MISMATCH', 'PIN.FLASH'],
});
