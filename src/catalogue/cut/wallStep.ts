import { derived, formula, input } from '../../core/define';
import { scallop } from './inputs';

export const cutWallStep = formula({
  name: 'CUT.WALLSTEP',
  summary: 'Step down of a sharp flat cutter on a drafted wall that leaves a scallop of a height.',
  inputs: [
    scallop('c'),
    input('draft', 'alpha', 'angle', {
      above: '0 deg',
      max: '90 deg',
      usual: ['0.1 deg', '45 deg'],
      says: 'Draft of the wall per side, from the vertical',
    }),
  ],
  steps: {
    z: {
      gives: 'length',
      expr: 'c/sin(alpha)',
      says: 'Height of the scallop over its wall: c = z sin α',
    },
  },
  result: 'z',
  sources: [derived('Right triangle of one step: its height over the wall is the step down times sin α')],
  notes: [
    'A cutter with a corner radius leaves less. A taper cutter of the same draft leaves no scallop at all.',
  ],
  related: ['CUT.SCALLOP', 'CUT.REACH'],
});
