import { commonPractice, derived, formula, input } from '../../core/define';
import { ofThread, threadWith } from '../threads';
import { chamferPitches } from './inputs';

export const tapTravel = formula({
  name: 'TAP.TRAVEL',
  summary: 'Through hole: tap travel from the top face that cuts full thread all the way through.',
  inputs: [
    input('plate', 't', 'length', {
      above: '0 mm',
      usual: ['1 mm', '100 mm'],
      says: 'Thickness of plate to be threaded all the way',
    }),
    threadWith({ P: ofThread.P }),
    chamferPitches,
    input('clear', 's', 'length', {
      min: '0 mm',
      optional: true,
      usual: ['0 mm', '10 mm'],
      says: 'Travel after the full thread has left the plate',
      whenLeftOut: 'one pitch',
    }),
  ],
  steps: {
    l_c: { gives: 'length', expr: 'c*P', says: 'The tap’s chamfer, which must come out below' },
    l_s: { gives: 'length', expr: 'given(s) ? s : P', says: 'And a little more' },
    z: { gives: 'length', expr: 't + l_c + l_s', says: 'From the tap’s end at the top face' },
  },
  result: 'z',
  sources: [
    derived('The first full tooth of the tap stands a chamfer above its end, and must pass the lower face'),
    commonPractice(
      'One pitch to be sure; chamfer of 3 to 5 pitches for a plug tap, 1 to 2 for a bottoming tap',
    ),
  ],
  notes: [
    'A tap that is only run until its end shows below leaves the last pitches cut by the chamfer alone: the screw binds there.',
    'Where the plate is countersunk below, its depth need not be threaded: take it off the thickness.',
  ],
  cautions: [
    {
      says: 'The plate must stand clear of the table or the next plate by the chamfer and a little more, else the tap is driven into it.',
    },
  ],
  related: ['TAP.DEPTH', 'TAP.FEED', 'TAP.DRILL'],
});
