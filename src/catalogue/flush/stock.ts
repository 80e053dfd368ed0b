import { choice, commonPractice, derived, formula, input } from '../../core/define';
import { draft } from '../seat/inputs';

const tolerance = { min: '0 mm', usual: ['0 mm', '0.5 mm'] } as const;

export const flushStock = formula({
  name: 'FLUSH.STOCK',
  summary: 'Stock to leave on a tapered insert for milling it flush in place.',
  inputs: [
    input('seatWidthTol', 't_w', 'length', {
      ...tolerance,
      says: 'Tolerance ± of the seat’s width, insert and pocket together',
    }),
    draft,
    input('cutoffTol', 't_c', 'length', {
      ...tolerance,
      says: 'Tolerance ± of the insert’s length as cut off',
    }),
    input('touchTol', 't_t', 'length', { ...tolerance, says: 'Uncertainty ± of touching off on the plate' }),
    input('bedding', 'b', 'length', {
      ...tolerance,
      default: '0 mm',
      says: 'How far the seat beds in during its first cycles',
    }),
    input('minimumCut', 'c', 'length', {
      ...tolerance,
      default: '0.002 in',
      says: 'Least cut that cleans up the face',
    }),
    choice('method', ['worst', 'rss'], {
      default: 'worst',
      says: 'Tolerances summed (worst) or root-sum-squared (rss)',
    }),
    input('sink', 'z', 'length', {
      ...tolerance,
      default: '0 mm',
      says: 'Sink of the insert under the push it is milled with, where its height was measured without it; from SEAT.SINK',
    }),
  ],
  steps: {
    h: { gives: 'length', expr: 't_w/(2*tan(alpha))', says: 'Height that the seat’s width tolerance makes' },
    T: {
      gives: 'length',
      by: 'method',
      cases: { worst: 'h + t_c + t_t', rss: 'sqrt(h^2 + t_c^2 + t_t^2)' },
      says: 'Tolerances together',
    },
    s: { gives: 'length', expr: 'T + b + c + z', says: 'With bedding, the least cut and the sink' },
  },
  result: 's',
  sources: [
    derived('Similar triangles for the height, worst-case or root-sum-square stack of the rest'),
    commonPractice('Least clean-up cut of 0.002 in'),
  ],
  notes: [
    'Worst case is right for one mold; root-sum-square is for many alike, with tolerances that are centered and independent.',
  ],
  cautions: [
    {
      says: 'Seat the insert with its full push a few times before milling, and hold it down while you cut: a loose insert lifts into the cutter.',
    },
  ],
  related: ['SEAT.HEIGHT', 'SEAT.STEP', 'FLUSH.PASSES'],
});
