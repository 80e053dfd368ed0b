import { constant, formula, input } from '../../core/define';
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
  constants: { h_e: constant('length', '5 µm', 'Thinnest chip that a sharp edge still cuts') },
  steps: {
    ...engagement,
    h: { gives: 'length', expr: 'f_z*s', says: 'Chip thickness where the tooth is deepest' },
  },
  result: 'h',
  valid: [smallFeed],
  sources: [CIRCLE_PATH],
  cautions: [
    {
      when: 'h < h_e',
      says: 'Thinner than about 5 µm the edge rubs and does not cut: feed faster or use a sharper cutter.',
    },
  ],
  related: ['CUT.CHIPFEED', 'CUT.FORCE', 'CUT.FEED'],
});
