import { formula, input } from '../../core/define';
import { ballDia, SHARP_BALL, slope, TWO_CIRCLES } from './inputs';

export const cutScallop = formula({
  name: 'CUT.SCALLOP',
  summary: 'Height of the scallop that a ball cutter leaves between passes, exact.',
  inputs: [
    ballDia,
    input('stepover', 's', 'length', {
      min: '0 mm',
      usual: ['0.005 mm', '10 mm'],
      says: 'Distance of the passes as seen from above',
    }),
    slope,
  ],
  refuse: [
    {
      when: 's > D*cos(beta)',
      argument: 'stepover',
      says: 'must not be larger than {ballDia}, times the cosine of the slope: the passes would not meet',
    },
  ],
  steps: {
    R: { gives: 'length', expr: 'D/2', says: 'Radius of the ball' },
    s_b: { gives: 'length', expr: 's/cos(beta)', says: 'Distance of the passes along the slope' },
    h: {
      gives: 'length',
      expr: '(s_b/2)^2/(R + sqrt(max(0, R^2 - (s_b/2)^2)))',
      says: 'R − √(R² − (s/2)²), written so that a small scallop keeps its digits',
    },
  },
  result: 'h',
  sources: [TWO_CIRCLES],
  notes: ['The usual s²/(8R) is low by 4 % at a stepover of 0.8 R.', SHARP_BALL],
  related: ['CUT.STEPOVER', 'CUT.WALLSTEP', 'CUT.BALLDIA'],
});
