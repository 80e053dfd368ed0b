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
});
