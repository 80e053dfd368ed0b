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
});
