import { derived, formula, input } from '../../core/define';
import { feedRate } from './inputs';

export const cutTime = formula({
  name: 'CUT.TIME',
  summary: 'Time of a cut at a feed rate.',
  inputs: [
    input('length', 'L', 'length', {
      min: '0 mm',
      usual: ['1 mm', '100 m'],
      says: 'Length of one pass, run-in and run-out included',
    }),
    feedRate,
    input('passes', 'i', 'count', { usual: [1, 500], min: 1, default: 1, says: 'Number of passes' }),
  ],
  steps: { t: { gives: 'time', expr: 'i*L/v_f', says: 'Way over speed' } },
  result: 't',
  sources: [derived('Way over speed')],
  notes: [
    'Short moves and corners never reach the feed rate: a machine takes longer than this in fine work.',
  ],
  related: ['CUT.FEED', 'CUT.STEPOVER', 'COST.CYCLE'],
});
