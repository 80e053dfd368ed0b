import { derived, formula } from '../../core/define';
import { drilled } from '../drills';
import { drillPoint, pointAngle } from './inputs';

export const drillPointLength = formula({
  name: 'DRILL.POINT',
  summary: 'Length of a drill’s point, beyond the full-diameter hole.',
  inputs: [drilled('diameter', 'd_p', 'Drill, by its diameter or name'), pointAngle],
  steps: { ...drillPoint },
  result: 'h',
  sources: [
    derived('Cone of the point angle over the drill’s diameter; the chisel edge left out of account'),
  ],
  notes: ['Depths on drawings go to the full diameter; the tip goes this much deeper.'],
  related: ['TAP.DEPTH', 'DRILL.SIZE'],
  checks: [
    {
      given: { diameter: '6 mm' },
      expect: '1.80258185708 mm',
      within: 1e-10,
      from: 'by hand: 3/tan 59° = 3/1.66427948',
    },
    {
      given: { diameter: '1/4', pointAngle: '135 deg' },
      expect: '0.0517766952966 in',
      within: 1e-10,
      from: 'by hand: 0.125/tan 67.5° = 0.125/(1 + √2)',
    },
    {
      given: { diameter: '10 mm', pointAngle: '90 deg' },
      expect: '5 mm',
      within: 1e-12,
      from: 'a right-angled point is as long as the radius',
      limit: true,
    },
    {
      given: { diameter: '10 mm', pointAngle: '180 deg' },
      expect: '0 mm',
      within: 1e-12,
      from: 'a flat drill has no point',
      limit: true,
    },
  ],
});
