import { derived, formula } from '../../core/define';
import { axialDepth, ballDia } from './inputs';

export const cutBallDia = formula({
  name: 'CUT.BALLDIA',
  summary: 'Diameter at which a ball cutter cuts at an axial depth on a level surface.',
  inputs: [ballDia, axialDepth],
  steps: {
    D_e: {
      gives: 'length',
      expr: '2*a_p < D ? 2*sqrt(a_p*(D - a_p)) : D',
      says: 'Chord of the ball at that depth; from its radius on the full diameter',
    },
  },
  result: 'D_e',
  sources: [derived('Chord of a circle at a depth')],
  notes: [
    'Take the spindle speed for this diameter: by the full one a shallow cut runs far too slow. At the very tip the speed is nought; tilting the work helps.',
  ],
  cautions: [
    {
      when: '2*a_p > D',
      says: 'Deeper than the ball’s radius: the straight part of the cutter cuts as well.',
    },
  ],
  related: ['CUT.RPM', 'CUT.SCALLOP'],
});
