import { commonPractice, derived, formula } from '../../core/define';
import { expandingMetal } from '../metals';
import { EXPANSION, length, rise } from './inputs';

export const heatMismatch = formula({
  name: 'HEAT.MISMATCH',
  summary: 'Growth of a length in one metal less its growth in another.',
  inputs: [
    length,
    expandingMetal('metalA', 'A', 'Metal whose growth counts positive'),
    rise('riseA', 'DT_A', 'metal A'),
    expandingMetal('metalB', 'B', 'Metal whose growth is taken off'),
    rise('riseB', 'DT_B', 'metal B'),
  ],
  steps: {
    u_A: { gives: 'length', expr: 'L*alpha_A*DT_A', says: 'Growth of A' },
    u_B: { gives: 'length', expr: 'L*alpha_B*DT_B', says: 'Growth of B' },
    u: { gives: 'length', expr: 'u_A - u_B', says: 'What is left between them' },
  },
  result: 'u',
  sources: [
    derived(EXPANSION),
    commonPractice('One round and one diamond dowel, or a slot, where two metals are dowelled together'),
  ],
  notes: [
    'For two dowels in plates of different metal, or plates at different temperature: length is the distance of ' +
      'the dowels, and the mismatch is what they must give. More than the dowels’ play: let one of them slide.',
  ],
  related: ['HEAT.GROWTH', 'FIT.GAP', 'PIN.LENGTH'],
  checks: [
    {
      given: { length: '120 mm', metalA: '6061-T6', riseA: '35 °C', metalB: 'P20', riseB: '35 °C' },
      expect: '0.04536 mm',
      within: 1e-9,
      from: 'by hand: 120 × (23.6e-6 − 12.8e-6) × 35',
    },
    {
      given: { length: '3 in', metalA: '7075-T6', riseA: '70 °F', metalB: 'H13', riseB: '50 °F' },
      expect: '0.00181333333 in',
      within: 1e-8,
      from: 'by hand: 3 × (23.4e-6/1.8 × 70 − 11e-6/1.8 × 50)',
    },
    {
      given: { length: '3 in', metalA: 'P20', riseA: '50 °F', metalB: 'P20', riseB: '50 °F' },
      expect: '0 in',
      from: 'the same metal at the same rise grows alike',
      limit: true,
    },
  ],
});
