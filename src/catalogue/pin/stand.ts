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
  checks: [
    {
      given: {
        pinLength: '70 mm',
        stack: '70 mm',
        plateMetal: '6061-T6',
        plateRise: '35 °C',
        pinMetal: 'H13',
        pinRise: '25 °C',
      },
      expect: '-0.03857 mm',
      within: 1e-9,
      from: 'by hand: 70 × (11e-6 × 25 − 23.6e-6 × 35)',
    },
    {
      given: {
        pinLength: '3.201 in',
        stack: '3.2 in',
        plateMetal: '7075-T6',
        plateRise: '60 °F',
        pinMetal: 'H13',
        pinRise: '45 °F',
      },
      expect: '-0.000615725 in',
      within: 1e-9,
      from: 'by hand: 0.001 + 3.201 × 11e-6 × 25 − 3.2 × 23.4e-6 × 60/1.8',
    },
    {
      given: {
        pinLength: '85.07216618515889 mm',
        stack: '85 mm',
        plateMetal: '23.6e-6 1/°C',
        plateRise: '40 °C',
        pinMetal: '11e-6 1/°C',
        pinRise: '30 °C',
      },
      expect: '0.02 mm',
      within: 1e-9,
      from: 'inverse of PIN.LENGTH: 85.10024/1.00033 stands 0.02 mm proud of 85 mm',
      limit: true,
    },
    {
      given: {
        pinLength: '70.05 mm',
        stack: '70 mm',
        plateMetal: 'P20',
        plateRise: '30 °C',
        pinMetal: 'P20',
        pinRise: '0 °C',
      },
      expect: '0.02312 mm',
      within: 1e-9,
      from: 'a cold pin loses just what the plates grow: 0.05 − 70 × 12.8e-6 × 30',
      limit: true,
    },
  ],
});
