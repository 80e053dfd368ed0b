import { named, type Binding, type Change, type Input } from '../core/define';
import { Refusal } from '../core/refusal';
import { threadLimits, type LimitedDiameter, type ThreadClass } from '../tables/threadLimits';
import { namesOf } from '../tables/names';
import { findThread } from '../tables/threadName';
import { stressArea, THREADS, type Thread } from '../tables/threads';

const THREAD_CHANGES: readonly Change[] = [
  {
    basis: 2,
    says: '"8/32 UNC" is #8-32, and so with every numbered size; before, the nearest fraction was read.',
  },
];

/** The classes that screws and tapped holes have where nothing else is said. */
export const USUAL_CLASS = {
  UN: { screw: '2A', hole: '2B' },
  ISO: { screw: '6g', hole: '6H' },
} as const satisfies Readonly<Record<Thread['system'], Readonly<Record<'screw' | 'hole', ThreadClass>>>>;

/** A limit of the usual class of screw or hole, m; refuses the few fine threads that the class leaves out. */
const usualLimit =
  (part: 'screw' | 'hole', diameter: LimitedDiameter, which: 'min' | 'max') =>
  (thread: Thread): number => {
    const of = USUAL_CLASS[thread.system][part];
    try {
      return threadLimits(thread, of, diameter)[which] as number;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      throw new Refusal(
        `is ${thread.name}, for which class ${of} has no limits: take the next coarser pitch`,
        'thread',
      );
    }
  };

/** As drawings have them and as people write them: `#10-32 UNF`, `#10-32`, `10-32`. */
const threadNames = (): string[] =>
  namesOf(THREADS).flatMap((name) => {
    const short = name.replace(/ UN\w+$/, '');
    return [name, short, short.replace(/^#/, '')];
  });

/** What equations take of a thread, by symbol. */
export const ofThread = {
  d: { gives: 'length', says: 'Basic major diameter', from: ({ major }) => major },
  P: { gives: 'length', says: 'Pitch', from: ({ pitch }) => pitch },
  A_s: { gives: 'area', says: 'Tensile stress area', from: stressArea },
  d_min: {
    gives: 'length',
    says: 'Smallest major diameter of the screw, class 2A or 6g',
    from: usualLimit('screw', 'major', 'min'),
  },
  d_2min: {
    gives: 'length',
    says: 'Smallest pitch diameter of the screw, class 2A or 6g',
    from: usualLimit('screw', 'pitch', 'min'),
  },
  D_1max: {
    gives: 'length',
    says: 'Largest minor diameter of the hole, class 2B or 6H',
    from: usualLimit('hole', 'minor', 'max'),
  },
  D_2max: {
    gives: 'length',
    says: 'Largest pitch diameter of the hole, class 2B or 6H',
    from: usualLimit('hole', 'pitch', 'max'),
  },
} as const satisfies Readonly<Record<string, Binding<Thread>>>;

/** A thread by its designation, that gives equations the symbols which they use. */
export const threadWith = (binds: Readonly<Record<string, Binding<Thread>>>): Input<'thread', Thread> =>
  named<'thread', Thread>(
    'thread',
    'thread',
    {
      what: 'a thread such as "10-32", "1/4-20" or "M6"',
      read: findThread,
      names: threadNames,
      binds,
      changes: THREAD_CHANGES,
    },
    { says: 'Designation of the thread' },
  );

export const thread = threadWith({});
