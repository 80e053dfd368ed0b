import { derived, formula, input } from '../../core/define';
import { ofThread, threadWith } from '../threads';

export const tapFeed = formula({
  name: 'TAP.FEED',
  summary: 'Feed rate that matches the pitch of a tap.',
  inputs: [
    threadWith({ P: ofThread.P }),
    input('rpm', 'n', 'rotation', { above: '0 rpm', usual: ['20 rpm', '5000 rpm'], says: 'Spindle speed' }),
  ],
  steps: { v_f: { gives: 'feedRate', expr: 'n*P', says: 'One pitch a turn' } },
  result: 'v_f',
  sources: [derived('A thread of one start advances by its pitch in a turn')],
  notes: [
    'With a tension and compression holder program 1 to 2 % less, so that the tap pulls itself in (common practice); with a rigid cycle give exactly this.',
  ],
  cautions: [
    {
      says: 'Spindle and feed must stop and turn round together: a tap that is fed by hand wheel or override breaks.',
    },
  ],
  related: ['TAP.TRAVEL', 'TAP.TORQUE', 'CUT.SPEED', 'CUT.RPM'],
  checks: [
    {
      given: { thread: 'M6', rpm: '300 rpm' },
      expect: '300 mm/min',
      within: 1e-12,
      from: 'by hand: 300 × 1 mm',
    },
    {
      given: { thread: '1/4-20', rpm: '400 rpm' },
      expect: '20 in/min',
      within: 1e-12,
      from: 'by hand: 400/20',
    },
    {
      given: { thread: '1-8', rpm: '1 rpm' },
      expect: '0.125 in/min',
      within: 1e-12,
      from: 'at one turn a minute the pitch itself',
      limit: true,
    },
  ],
});
