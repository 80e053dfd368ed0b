import { named, type Input } from '../core/define';
import type { Thread } from '../tables/threads';
import { findThread } from '../tables/threadName';

/** A thread by its designation. Gives the symbols `d` (basic major diameter) and `P` (pitch). */
export const thread: Input<'thread', Thread> = named<'thread', Thread>(
  'thread',
  'thread',
  {
    what: 'a thread such as "10-32", "1/4-20" or "M6"',
    read: findThread,
    binds: {
      d: { gives: 'length', says: 'Basic major diameter', from: ({ major }) => major },
      P: { gives: 'length', says: 'Pitch', from: ({ pitch }) => pitch },
    },
  },
  { says: 'Designation of the thread' },
);
