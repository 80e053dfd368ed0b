import { formula } from '../../core/define';
import { ballDia, scallop, SHARP_BALL, slope, TWO_CIRCLES } from './inputs';

export const cutStepover = formula({
  name: 'CUT.STEPOVER',
  summary: 'Stepover, as seen from above, at which a ball cutter leaves a ridge of a height.',
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
      says: 'Distance of the passes along the slope: chord at the height of the ridge',
    },
    s: { gives: 'length', expr: 's_b*cos(beta)', says: 'As seen from above' },
  },
  result: 's',
  sources: [TWO_CIRCLES],
  notes: [SHARP_BALL],
  related: ['CUT.SCALLOP', 'CUT.WALLSTEP'],
  checks: [
    {
      given: { ballDia: '8 mm', scallop: '0.004 mm', slope: '30 deg' },
      expect: '0.309761198345 mm',
      within: 1e-11,
      from: 'by hand: 2 √(0.004 × 7.996) × 0.8660254',
    },
    {
      given: { ballDia: '10 mm', scallop: '1 mm' },
      expect: '6 mm',
      within: 1e-12,
      from: 'inverse of CUT.SCALLOP in a 3-4-5 triangle',
      limit: true,
    },
    {
      given: { ballDia: '10 mm', scallop: '5 mm' },
      expect: '10 mm',
      within: 1e-12,
      from: 'a ridge as high as the radius: passes a diameter apart',
      limit: true,
    },
  ],
});
