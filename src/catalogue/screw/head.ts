import { choice, lookup, type Column } from '../../core/define';
import { naming } from '../../core/refusal';
import {
  FASTENER_SOURCES,
  flatHead,
  type FlatHead,
  socketHead,
  type SocketHead,
} from '../../tables/fasteners';
import type { Thread } from '../../tables/threads';
import { thread } from '../threads';
import { rowsWith } from './inputs';

const column = (says: string, from: (head: SocketHead) => number): Column<Thread> => ({
  gives: 'length',
  says,
  from: (of) => naming('thread', () => from(socketHead(of))),
  source: (of) => naming('thread', () => socketHead(of).source),
});

const flat = (gives: 'length' | 'angle', says: string, from: (head: FlatHead) => number): Column<Thread> => ({
  gives,
  says,
  from: (of) => naming('thread', () => from(flatHead(of))),
  source: (of) => naming('thread', () => flatHead(of).source),
});

const columns = {
  dia: column('head diameter', ({ head }) => head),
  height: column('head height', ({ height }) => height),
  hex: column('hexagon across flats', ({ hex }) => hex),
  'countersunk dia': flat('length', 'largest diameter of a countersunk head', ({ head }) => head),
  'countersunk height': flat('length', 'height of a countersunk head', ({ height }) => height),
  'countersunk hex': flat('length', 'hexagon of a countersunk head', ({ hex }) => hex),
  'countersunk angle': flat('angle', 'included angle of a countersunk head', ({ angle }) => angle),
} as const;
type What = keyof typeof columns;

export const screwHead = lookup({
  name: 'SCREW.HEAD',
  summary: 'Dimension of the head of a socket head cap screw, or of a socket countersunk screw.',
  inputs: [
    thread,
    choice('what', Object.keys(columns) as What[], {
      says: 'Dimension wanted: largest diameter (knurled), height, or hexagon across flats; the same, or the angle, of a countersunk head',
    }),
  ],
  columns,
  rows: () => rowsWith(socketHead),
  sources: [
    FASTENER_SOURCES.isoHead,
    FASTENER_SOURCES.inchHead,
    FASTENER_SOURCES.isoFlat,
    FASTENER_SOURCES.inchFlat,
  ],
  notes: [
    'A countersunk head is measured to the sharp edge of its cone: that is the diameter to countersink to, and DRILL.CSINK gives the depth.',
    'The diameter is that of knurled heads, which are larger than nominal (M6: 10.22 mm). The head is as high as the thread is thick.',
  ],
  related: ['SCREW.BORE', 'DRILL.CSINK', 'SCREW.CLEARANCE', 'SHOULDER.VALUE'],
});
