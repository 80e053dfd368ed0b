import { choice, procedure } from '../../core/define';
import { refuse } from '../../core/refusal';
import { B1_1, ISO_965, THREAD_CLASSES, threadLimits, type LimitedDiameter } from '../../tables/threadLimits';
import { minorDiameter, pitchDiameter, type Thread } from '../../tables/threads';
import { thread } from '../threads';

const DIAMETERS: Readonly<
  Record<
    'major' | 'pitchdia' | 'minor',
    { readonly of: LimitedDiameter; readonly basic: (thread: Thread) => number }
  >
> = {
  major: { of: 'major', basic: ({ major }) => major },
  pitchdia: { of: 'pitch', basic: pitchDiameter },
  minor: { of: 'minor', basic: minorDiameter },
};

export const threadLimit = procedure({
  name: 'THREAD.LIMIT',
  summary: 'Limit of size of a thread in a tolerance class.',
  inputs: [
    thread,
    choice('class', THREAD_CLASSES, {
      says: 'Class: 2A and 6g for screws, 2B and 6H for holes; 2A and 2B are of inch threads, 6g and 6H of metric ones',
    }),
    choice('property', ['major', 'pitchdia', 'minor'], {
      says: 'Dimension wanted: major, pitch or minor diameter',
    }),
    choice('which', ['max', 'min'], { says: 'Limit wanted: upper or lower' }),
  ],
  gives: 'length',
  method:
    'The standard’s rounded tables where they stand in for its formulas, else its formulas with each term rounded as the tables are.',
  steps: {
    basic: {
      gives: 'length',
      says: 'Basic diameter, without rounding',
      equation: 'd, d - 0.6495*P or d - 1.0825*P',
    },
    by: { gives: 'text', says: 'Where the limit is from', equation: 'table or formula' },
  },
  run: (x, show) => {
    const { of, basic } = DIAMETERS[x.property];
    const limits = threadLimits(x.thread, x.class, of);
    const limit = limits[x.which];
    if (limit === undefined)
      return refuse(
        'which',
        `is ${x.which}, but class ${x.class} leaves that limit of the ${of} diameter to the tool`,
      );
    show('basic', basic(x.thread));
    show(
      'by',
      limits.by === 'table' ? 'rounded table of the standard' : 'formula, rounded as the standard’s tables',
    );
    return limit;
  },
  sources: [B1_1, ISO_965],
  notes: [
    'Class 2A, 6g: screws, smaller than basic by an allowance. Class 2B, 6H: tapped holes, basic or larger.',
    'The formulas alone miss the printed limits: the minor diameter of the 1/4-20 hole is printed 0.196 to 0.207 in and comes out as 0.1959 to 0.2070; the tolerance of a pitch of 1 mm is printed 0.236 mm and comes out as 0.230.',
  ],
  related: ['THREAD.VALUE', 'TAP.PERCENT', 'THREAD.STRIP'],
});
