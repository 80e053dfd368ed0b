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
});
