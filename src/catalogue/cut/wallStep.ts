import { derived, formula, input } from '../../core/define';
import { scallop } from './inputs';

export const cutWallStep = formula({
  name: 'CUT.WALLSTEP',
  summary: 'Step down of a sharp flat cutter on a drafted wall that leaves a stair of a height.',
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
      says: 'Height of the stair’s corner over its wall: c = z sin α',
    },
  },
  result: 'z',
  sources: [derived('Right triangle of one stair: its height over the wall is the step down times sin α')],
  notes: [
    'A cutter with a corner radius leaves less. A taper cutter of the same draft leaves no stair at all.',
  ],
  related: ['CUT.SCALLOP', 'CUT.REACH'],
  checks: [
    {
      given: { scallop: '0.003 mm', draft: '2 deg' },
      expect: '0.0859611250435 mm',
      within: 1e-11,
      from: 'by hand: 0.003/0.0348994967',
    },
    {
      given: { scallop: '0.01 mm', draft: '30 deg' },
      expect: '0.02 mm',
      within: 1e-12,
      from: 'by hand: sin 30° = 1/2',
    },
    {
      given: { scallop: '0.01 mm', draft: '90 deg' },
      expect: '0.01 mm',
      within: 1e-12,
      from: 'on a wall laid flat the stair is as high as its step',
      limit: true,
    },
  ],
});
