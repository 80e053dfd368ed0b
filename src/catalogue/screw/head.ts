import { choice, lookup, type Column } from '../../core/define';
import { naming } from '../../core/refusal';
import { FASTENER_SOURCES, socketHead, type SocketHead } from '../../tables/fasteners';
import type { Thread } from '../../tables/threads';
import { thread } from '../threads';
import { rowsWith } from './inputs';

const column = (says: string, from: (head: SocketHead) => number): Column<Thread> => ({
  gives: 'length',
  says,
  from: (of) => naming('thread', () => from(socketHead(of))),
  source: (of) => naming('thread', () => socketHead(of).source),
});

export const screwHead = lookup({
  name: 'SCREW.HEAD',
  summary: 'Dimension of the head of a socket head cap screw.',
  inputs: [
    thread,
    choice('what', ['dia', 'height', 'hex'], {
      says: 'Dimension wanted: largest diameter (knurled), height, or hexagon across flats',
    }),
  ],
  columns: {
    dia: column('head diameter', ({ head }) => head),
    height: column('head height', ({ height }) => height),
    hex: column('hexagon across flats', ({ hex }) => hex),
  },
  rows: () => rowsWith(socketHead),
  sources: [FASTENER_SOURCES.isoHead, FASTENER_SOURCES.inchHead],
  notes: [
    'The diameter is that of knurled heads, which are larger than nominal (M6: 10.22 mm). The head is as high as the thread is thick.',
  ],
  related: ['SCREW.BORE', 'SCREW.CLEARANCE', 'SHOULDER.VALUE'],
});
