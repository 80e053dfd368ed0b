import { derived, formula, input } from '../../core/define';
import { diameter, radialDepth, smallFeed, withinCutter } from './inputs';

export const cutMeanChip = formula({
  name: 'CUT.MEANCHIP',
  summary: 'Mean thickness of the chip over the arc in which a tooth cuts.',
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
    phi: { gives: 'angle', expr: 'acos(1 - 2*a_e/D)', says: 'Angle of the arc in which a tooth cuts' },
    h_m: { gives: 'length', expr: 'f_z*(2*a_e/D)/phi', says: 'Chip area over the length of the arc' },
  },
  result: 'h_m',
  valid: [smallFeed],
  sources: [derived('Mean of f_z sin φ over the arc of engagement: f_z (1 − cos φ)/φ, cos φ = 1 − 2 a_e/D')],
  notes: [
    'This is the thickness for power and for the mean force; the edge meets its thickest chip, CUT.CHIP, at one end of the arc. Half a cutter and a whole slot have the same mean.',
  ],
  related: ['CUT.CHIP', 'CUT.POWER', 'CUT.FORCE'],
});
