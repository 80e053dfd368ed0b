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
  checks: [
    {
      given: { chipThickness: '0.02 mm', radialDepth: '0.5 mm', diameter: '8 mm' },
      expect: '0.0413118223595 mm',
      within: 1e-10,
      from: 'by hand: 0.02/(2 √(0.0625 × 0.9375))',
    },
    {
      given: { chipThickness: '0.03 mm', radialDepth: '0.6 mm', diameter: '6 mm' },
      expect: '0.05 mm',
      within: 1e-12,
      from: 'inverse of CUT.CHIP with a feed of 0.05 mm',
      limit: true,
    },
    {
      given: { chipThickness: '0.002 in', radialDepth: '0.3 in', diameter: '0.5 in' },
      expect: '0.002 in',
      within: 1e-12,
      from: 'more than half engaged, the chip is the feed per tooth',
      limit: true,
    },
  ],
});
