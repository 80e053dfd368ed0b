import { derived, formula, fromMemory, input } from '../../core/define';
import { resinWith } from '../resins';

export const clampPressure = formula({
  name: 'CLAMP.PRESSURE',
  summary:
    'Cavity pressure to design for: the lower of what the resin usually takes and what the press can make.',
  inputs: [
    resinWith('resin', 'p_r', 'cavity pressure', { above: '0 MPa' }, 'Resin, or its usual cavity pressure'),
    input('availablePressure', 'p_a', 'pressure', {
      above: '0 MPa',
      usual: ['1 MPa', '200 MPa'],
      optional: true,
      says: 'Melt pressure that the press can make, as PRESS.INJECTION gives it',
      whenLeftOut: 'not looked at',
    }),
  ],
  steps: { p: { gives: 'pressure', expr: 'given(p_a) ? min(p_r, p_a) : p_r', says: 'The lower of the two' } },
  result: 'p',
  valid: [
    {
      holds: 'given(p_a) ? p_a >= p_r : 1 > 0',
      says: 'The press makes less than this resin usually takes: the cavity may not fill or pack. See FILL.REACH.',
    },
  ],
  sources: [
    fromMemory('Usual cavity pressures of the resin table: the middle of each range'),
    derived('A cavity never sees more than the plunger makes'),
  ],
  cautions: [
    {
      when: 'given(p_a) ? p_a < p_r : 1 < 0',
      says: 'The press cannot make the pressure that this resin usually takes: expect short shots and sinks; take a hotter, easier flowing grade, a thicker wall or a shorter flow.',
    },
  ],
  related: ['PRESS.INJECTION', 'CLAMP.FORCE', 'FILL.REACH'],
});
