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
      says: 'Largest diameter (knurled), height, or hexagon across flats',
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
  checks: [
    {
      given: { thread: 'M6', what: 'dia' },
      expect: '10.22 mm',
      within: 1e-12,
      from: 'ISO 4762, knurled (from memory)',
    },
    {
      given: { thread: 'M8', what: 'hex' },
      expect: '6 mm',
      within: 1e-12,
      from: 'DIN 912 and ISO 4762 (creativefasteners.co.in)',
    },
    {
      given: { thread: '1/4-20', what: 'hex' },
      expect: '3/16 in',
      within: 1e-12,
      from: 'ASME B18.3-2003 (aftfasteners.com)',
    },
    {
      given: { thread: '3/8-16', what: 'height' },
      expect: '0.375 in',
      within: 1e-12,
      from: 'ASME B18.3: as high as thick',
    },
  ],
});
