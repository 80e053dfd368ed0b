import { derived, formula, input } from '../../core/define';
import { diameter } from './inputs';

export const cutRpm = formula({
  name: 'CUT.RPM',
  summary: 'Spindle speed that gives a cutting speed, not above the spindle’s limit.',
  inputs: [
    input('speed', 'v', 'cuttingSpeed', {
      above: '0 m/min',
      usual: ['3 m/min', '1200 m/min'],
      says: 'Cutting speed',
    }),
    diameter,
    input('limit', 'n_max', 'rotation', {
      above: '0 rpm',
      optional: true,
      usual: ['500 rpm', '60000 rpm'],
      says: 'Highest speed of the spindle, or of the cutter if that is lower',
      whenLeftOut: 'no limit',
    }),
  ],
  steps: {
    n_v: { gives: 'rotation', expr: 'v/(pi*D)', says: 'Turns in which the circumference makes the speed' },
    n: {
      gives: 'rotation',
      expr: 'given(n_max) ? min(n_v, n_max) : n_v',
      says: 'Not above the limit',
    },
  },
  result: 'n',
  sources: [derived('v = π D n')],
  notes: ['For a ball cutter take the diameter at which it cuts: CUT.BALLDIA.'],
  cautions: [
    {
      when: 'given(n_max) and n_v > n_max',
      says: 'The limit sets this speed: take the feed from it, not from the speed that was wanted.',
    },
    {
      says: 'Do not exceed the speed marked on cutter, chuck and holder: a long or unbalanced tool bends out and flies apart.',
    },
  ],
  related: ['CUT.SPEED', 'CUT.FEED', 'CUT.BALLDIA'],
});
