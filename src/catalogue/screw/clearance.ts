import { choice, lookup, type Column } from '../../core/define';
import { CLEARANCE_FITS, clearanceHole, FASTENER_SOURCES } from '../../tables/fasteners';
import { naming } from '../../core/refusal';
import type { Thread } from '../../tables/threads';
import { thread } from '../threads';
import { rowsWith } from './inputs';

type Fit = (typeof CLEARANCE_FITS)[number];

const column = (fit: Fit): Column<Thread> => ({
  gives: 'length',
  says: `${fit} clearance hole`,
  from: (of) => naming('thread', () => clearanceHole(of, fit).diameter),
  source: (of) => naming('thread', () => clearanceHole(of, fit).source),
});

export const screwClearance = lookup({
  name: 'SCREW.CLEARANCE',
  summary: 'Diameter of a clearance hole for a screw.',
  inputs: [
    thread,
    choice('fit', CLEARANCE_FITS, {
      default: 'normal',
      says: 'Close, normal or loose',
    }),
  ],
  columns: { close: column('close'), normal: column('normal'), loose: column('loose') },
  rows: () => rowsWith((of) => clearanceHole(of, 'normal')),
  sources: [FASTENER_SOURCES.isoHole, FASTENER_SOURCES.inchHole, FASTENER_SOURCES.looseInchHole],
  notes: [
    'Normal is the medium series of ISO 273. Dowels locate plates, screws only hold them: give the screws room.',
  ],
  related: ['SCREW.BORE', 'SCREW.HEAD', 'DRILL.NEAREST'],
});
