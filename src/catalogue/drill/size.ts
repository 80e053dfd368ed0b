import { lookup } from '../../core/define';
import { DRILL_SOURCES, DRILLS } from '../../tables/drills';
import { drillName } from '../drills';

export const drillSize = lookup({
  name: 'DRILL.SIZE',
  summary: 'Diameter of a drill by its name.',
  inputs: [drillName],
  columns: {
    diameter: {
      gives: 'length',
      says: 'diameter',
      from: ({ diameter }) => diameter,
      source: ({ series }) => DRILL_SOURCES[series],
    },
  },
  rows: () => DRILLS.map((drill) => [drill.name, drill] as const),
  sources: [DRILL_SOURCES.number, DRILL_SOURCES.metric],
  notes: [
    'Takes "#7", "No. 7", "F", "letter F", "7/32", "1 1/4", "5 mm". A bare whole number is refused where it could be a number drill, millimeters or inches.',
    'A drill cuts a little over its size: 0.05 to 0.1 mm (0.002 to 0.004 in) for a 6 mm drill ground by hand (common practice). Where the size matters, ream.',
  ],
  related: ['DRILL.NEAREST', 'DRILL.POINT', 'TAP.DRILL'],
});
