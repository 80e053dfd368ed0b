import { commonPractice, derived, formula, input } from '../../core/define';
import { EXPANDING_STACK, stack, warmStack } from './inputs';

export const pinStand = formula({
  name: 'PIN.STAND',
  summary: 'How far an ejector pin stands proud of the face (+) or below it (−) when the mold is warm.',
  inputs: [
    input('pinLength', 'L', 'length', {
      above: '0 mm',
      usual: ['5 mm', '1 m'],
      says: 'Length of the pin under its head, at room temperature',
    }),
    stack,
    ...warmStack,
  ],
  steps: {
    L_w: { gives: 'length', expr: 'L*(1 + alpha_pin*DT_pin)', says: 'The pin when warm' },
    H: { gives: 'length', expr: 'S*(1 + alpha_pl*DT_pl)', says: 'The stack when warm' },
    e: { gives: 'length', expr: 'L_w - H', says: 'What stands above the face' },
  },
  result: 'e',
  valid: [
    {
      holds: 'abs(e) <= 0.05*S',
      says: 'Pin and stack differ by more than a twentieth: is one of them in the wrong unit?',
    },
  ],
  sources: [derived(EXPANDING_STACK), commonPractice('Usual call on a drawing: 0 to 0.05 mm proud')],
  notes: ['Below the face (−) the part gets a boss under the pin, above it (+) a dimple.'],
  related: ['PIN.LENGTH', 'HEAT.MISMATCH'],
});
