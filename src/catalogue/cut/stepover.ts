import { formula } from '../../core/define';
import { ballDia, scallop, SHARP_BALL, slope, TWO_CIRCLES } from './inputs';

export const cutStepover = formula({
  name: 'CUT.STEPOVER',
  summary: 'Stepover, as seen from above, at which a ball cutter leaves a scallop of a height.',
  inputs: [ballDia, scallop('h'), slope],
  refuse: [
    {
      when: '2*h > D',
      argument: 'scallop',
      says: 'must not be larger than the radius of the ball, half of {ballDia}',
    },
  ],
  steps: {
    s_b: {
      gives: 'length',
      expr: '2*sqrt(h*(D - h))',
      says: 'Distance of the passes along the slope: chord at the height of the scallop',
    },
    s: { gives: 'length', expr: 's_b*cos(beta)', says: 'As seen from above' },
  },
  result: 's',
  sources: [TWO_CIRCLES],
  notes: [SHARP_BALL],
  related: ['CUT.SCALLOP', 'CUT.WALLSTEP'],
});
