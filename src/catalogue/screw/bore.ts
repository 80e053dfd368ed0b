import { choice, lookup } from '../../core/define';
import { naming } from '../../core/refusal';
import { FASTENER_SOURCES, socketHead } from '../../tables/fasteners';
import { thread } from '../threads';
import { rowsWith } from './inputs';

export const screwBore = lookup({
  name: 'SCREW.BORE',
  summary: 'Counterbore for a socket head cap screw.',
  inputs: [thread, choice('what', ['dia', 'depth'], { says: 'Dimension wanted: diameter or depth' })],
  columns: {
    dia: {
      gives: 'length',
      says: 'counterbore diameter',
      from: (of) => naming('thread', () => socketHead(of).bore),
      source: (of) => naming('thread', () => socketHead(of).boreSource),
    },
    depth: {
      gives: 'length',
      says: 'counterbore depth',
      from: (of) => naming('thread', () => socketHead(of).boreDepth),
      source: FASTENER_SOURCES.boreDepth,
    },
  },
  rows: () => rowsWith(socketHead),
  sources: [FASTENER_SOURCES.isoBore, FASTENER_SOURCES.inchHole, FASTENER_SOURCES.boreDepth],
  notes: [
    'The depth leaves the head 0.4 mm (1/64 in) below the face; add what will be ground or milled off the face.',
  ],
  cautions: [
    {
      says: 'Leave at least one screw diameter of plate under the head (common practice), more in aluminum.',
    },
  ],
  related: ['SCREW.HEAD', 'SCREW.CLEARANCE'],
});
