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
  checks: [
    {
      given: { speed: '90 m/min', diameter: '8 mm' },
      expect: '3580.98621957 rpm',
      within: 1e-11,
      from: 'by hand: 90000/(8 π)',
    },
    {
      given: { speed: '200 ft/min', diameter: '0.5 in' },
      expect: '1528 rpm',
      within: 2e-4,
      from: 'shop rule 3.82 × ft/min over inches (common practice)',
    },
    {
      given: { speed: '300 m/min', diameter: '3 mm', limit: '10000 rpm' },
      expect: '10000 rpm',
      within: 1e-12,
      from: 'the spindle’s limit holds where the speed asks for more',
      limit: true,
    },
  ],
});
