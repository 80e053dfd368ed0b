import { derived, formula, input } from '../../core/define';
import { expandingMetal } from '../metals';
import { draft } from './inputs';

const rise = { usual: ['-30 °C', '250 °C'] } as const;

export const seatHeatDrop = formula({
  name: 'SEAT.HEATDROP',
  summary: 'Change of the seated height of a tapered insert from heating; positive: it rises.',
  inputs: [
    input('width', 'w', 'length', {
      above: '0 mm',
      usual: ['2 mm', '300 mm'],
      says: 'Width or diameter of the seat at the face',
    }),
    draft,
    expandingMetal('insertMetal', 'i', 'Metal of the insert'),
    input('insertRise', 'T_i', 'rise', {
      ...rise,
      says: 'Rise of the insert over the temperature it was fitted at',
    }),
    expandingMetal('blockMetal', 'o', 'Metal of the block'),
    input('blockRise', 'T_o', 'rise', { ...rise, says: 'Rise of the block over the same temperature' }),
  ],
  steps: {
    dw: {
      gives: 'length',
      expr: 'w*(alpha_i*T_i - alpha_o*T_o)',
      says: 'Growth in width of the insert less that of its pocket',
    },
    h: { gives: 'length', expr: 'dw/(2*tan(alpha))', says: 'Half on each side, along the taper' },
  },
  result: 'h',
  sources: [derived('Free thermal growth of insert and pocket, similar triangles on both flanks')],
  notes: [
    'A steel insert in an aluminum block drops as the mold warms; an insert that is much hotter than its block rises.',
    'Take the width at the face, whose height is asked for.',
    'A locked seat cannot follow at once: it builds up or loses pressure first and moves when it is next seated.',
  ],
  cautions: [
    {
      when: 'h > 0',
      says: 'The insert rises when warm: it stands proud of the face, and the parting line may not close.',
    },
    {
      when: 'h < 0',
      says: 'The insert drops when warm. A seat that was locked warm is gripped by the block as it cools: free it while warm.',
    },
  ],
  related: ['SEAT.HEIGHT', 'HEAT.MISMATCH', 'FLUSH.STOCK'],
});
