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
    'A steel pin grows less than aluminium plates: ground flush at room temperature it ends low in the warm mold and leaves a boss on the part.',
    'A pin that stands proud leaves a dimple, which hides better and cannot catch.',
  ],
  related: ['PIN.STAND', 'HEAT.MISMATCH', 'PIN.FLASH'],
  checks: [
    {
      given: {
        stack: '85 mm',
        proud: '0.02 mm',
        plateMetal: '23.6e-6 1/°C',
        plateRise: '40 °C',
        pinMetal: '11e-6 1/°C',
        pinRise: '30 °C',
      },
      expect: '85.07216619 mm',
      within: 1e-9,
      from: 'by hand: (85 × 1.000944 + 0.02)/1.00033 = 85.10024/1.00033',
    },
    {
      given: {
        stack: '3.2 in',
        proud: '0.001 in',
        plateMetal: '6061-T6',
        plateRise: '60 °F',
        pinMetal: 'H13',
        pinRise: '45 °F',
      },
      expect: '3.20263660827 in',
      within: 1e-10,
      from: 'by hand: (3.2 × (1 + 23.6e-6 × 60/1.8) + 0.001)/(1 + 11e-6 × 45/1.8)',
    },
    {
      given: {
        stack: '70 mm',
        proud: '0 mm',
        plateMetal: 'P20',
        plateRise: '0 °C',
        pinMetal: 'H13',
        pinRise: '0 °C',
      },
      expect: '70 mm',
      within: 1e-12,
      from: 'a cold mold wants the length of the stack',
      limit: true,
    },
  ],
});
