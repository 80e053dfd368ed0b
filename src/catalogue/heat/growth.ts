import { derived, formula } from '../../core/define';
import { expandingMetal } from '../metals';
import { EXPANSION, length, rise } from './inputs';

export const heatGrowth = formula({
  name: 'HEAT.GROWTH',
  summary: 'Growth of a length of metal from a rise in temperature.',
  inputs: [length, expandingMetal('metal', '', 'Metal that warms'), rise('rise', 'DT', 'the metal')],
  steps: {
    u: {
      gives: 'length',
      expr: 'L*alpha_T*DT',
      says: 'Length times coefficient of expansion times rise; negative: it shrinks',
    },
  },
  result: 'u',
  sources: [derived(EXPANSION)],
  notes: [
    'The coefficients are those of metals between room temperature and 100 °C; a batch differs by a few per cent.',
  ],
  related: ['HEAT.MISMATCH', 'PIN.STAND', 'SEAT.HEATDROP'],
});
