import { formula, input } from '../../core/define';
import { CIRCLE_PATH, diameter, engagement, radialDepth, smallFeed, withinCutter } from './inputs';

export const cutChip = formula({
  name: 'CUT.CHIP',
  summary: 'Real thickness of the chip at its thickest in a side cut.',
  inputs: [
    input('chipLoad', 'f_z', 'length', {
      above: '0 mm',
      usual: ['0.001 mm', '0.5 mm'],
      says: 'Feed per tooth',
    }),
    radialDepth,
    diameter,
  ],
  refuse: [withinCutter],
  steps: {
    ...engagement,
    h: { gives: 'length', expr: 'f_z*s', says: 'Chip thickness where the tooth is deepest' },
  },
  result: 'h',
  valid: [smallFeed],
  sources: [CIRCLE_PATH],
  cautions: [
    {
      when: 'h < 5e-6',
      says: 'Thinner than about 5 µm the edge rubs and does not cut: feed faster or use a sharper cutter.',
    },
  ],
  related: ['CUT.CHIPFEED', 'CUT.FORCE', 'CUT.FEED'],
  checks: [
    {
      given: { chipLoad: '0.04 mm', radialDepth: '0.5 mm', diameter: '8 mm' },
      expect: '0.019364916731 mm',
      within: 1e-10,
      from: 'by hand: 2 × 0.04 × √(0.0625 × 0.9375)',
    },
    {
      given: { chipLoad: '0.05 mm', radialDepth: '0.6 mm', diameter: '6 mm' },
      expect: '0.03 mm',
      within: 1e-12,
      from: 'by hand: 2 × 0.05 × √(0.1 × 0.9)',
    },
    {
      given: { chipLoad: '0.002 in', radialDepth: '0.3 in', diameter: '0.5 in' },
      expect: '0.002 in',
      within: 1e-12,
      from: 'more than half engaged, the chip is the feed per tooth',
      limit: true,
    },
  ],
});
