import { choice, formula, fromMemory, input } from '../../core/define';

export const fitClearHole = formula({
  name: 'FIT.CLEARHOLE',
  summary: 'Smallest hole that always takes its fastener, from the position tolerance.',
  inputs: [
    input('fastener', 'F', 'length', {
      above: '0 mm',
      usual: ['1 mm', '40 mm'],
      says: 'Largest diameter of the screw, dowel or pin',
    }),
    input('positionTol', 'T', 'length', {
      min: '0 mm',
      usual: ['0 mm', '1 mm'],
      says: 'Position tolerance of the holes, as a diameter, the same in both plates',
    }),
    choice('case', ['floating', 'fixed'], {
      default: 'floating',
      says: 'Fastener that is loose in both plates (floating), or held in one by a thread or a press fit (fixed)',
    }),
  ],
  steps: {
    H: {
      gives: 'length',
      by: 'case',
      cases: { floating: 'F + T', fixed: 'F + 2*T' },
      says: 'Smallest hole: both patterns at their worst against each other',
    },
  },
  result: 'H',
  sources: [fromMemory('ASME Y14.5, floating and fixed fasteners: H = F + T, H = F + 2 T')],
  notes: [
    'A thread that leans adds to it: give its position with a projected zone as long as the plate is thick.',
    'The hole’s own lower limit must be at least this. SCREW.CLEARANCE gives the standard sizes.',
  ],
  related: ['FIT.POSITION', 'SCREW.CLEARANCE', 'FIT.GAP'],
});
