import { formula, input } from '../../core/define';
import { CIRCLE_PATH, diameter, engagement, radialDepth, smallFeed, withinCutter } from './inputs';

export const cutChipFeed = formula({
  name: 'CUT.CHIPFEED',
  summary: 'Feed per tooth that gives a chip thickness in a side cut: the inverse of CUT.CHIP.',
  inputs: [
    input('chipThickness', 'h', 'length', {
      above: '0 mm',
      usual: ['0.001 mm', '0.5 mm'],
      says: 'Chip thickness wanted where the tooth is deepest',
    }),
    radialDepth,
    diameter,
  ],
  refuse: [withinCutter],
  steps: {
    ...engagement,
    f_z: { gives: 'length', expr: 'h/s', says: 'Feed per tooth' },
  },
  result: 'f_z',
  valid: [smallFeed],
  sources: [CIRCLE_PATH],
  cautions: [
    {
      when: 'f_z > 3*h',
      says: 'Fed at more than three times the chip: in a corner the cutter is buried and takes the whole of it. Slow down there.',
    },
  ],
  related: ['CUT.CHIP', 'CUT.FEED'],
});
