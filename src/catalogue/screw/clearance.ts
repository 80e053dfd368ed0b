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
      says: 'Close, normal or loose; inch screws have close and normal',
    }),
  ],
  columns: { close: column('close'), normal: column('normal'), loose: column('loose') },
  rows: () => rowsWith((of) => clearanceHole(of, 'normal')),
  sources: [FASTENER_SOURCES.isoHole, FASTENER_SOURCES.inchHole],
  notes: [
    'Normal is the medium series of ISO 273. Dowels locate plates, screws only hold them: give the screws room.',
  ],
  related: ['SCREW.BORE', 'SCREW.HEAD', 'DRILL.NEAREST'],
  checks: [
    {
      given: { thread: 'M5' },
      expect: '5.5 mm',
      within: 1e-12,
      from: 'ISO 273 medium (gumyr/cq_warehouse clearance_hole_sizes.csv)',
    },
    {
      given: { thread: 'M4', fit: 'close' },
      expect: '4.3 mm',
      within: 1e-12,
      from: 'ISO 273 fine (the same list)',
    },
    { given: { thread: '1/4-20' }, expect: '9/32 in', within: 1e-12, from: 'ASME B18.3 (from memory)' },
  ],
});
