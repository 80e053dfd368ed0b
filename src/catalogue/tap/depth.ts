import { commonPractice, derived, formula, input } from '../../core/define';
import { drilledIfGiven } from '../drills';
import { drillPoint, pointAngle } from '../drill/inputs';
import { ofThread, threadWith } from '../threads';
import { usualHole } from './hole';
import { chamferPitches, SERIES_CHANGE } from './inputs';

export const tapDepth = formula({
  name: 'TAP.DEPTH',
  summary: 'Blind hole: depth to drill, to the tip of the point, for so much full thread.',
  inputs: [
    input('fullThread', 'L', 'length', {
      min: '0 mm',
      usual: ['1 mm', '80 mm'],
      says: 'Depth of full thread wanted',
    }),
    threadWith({
      P: ofThread.P,
      d_t: { gives: 'length', says: 'Diameter of its usual drill', from: usualHole },
    }),
    chamferPitches,
    pointAngle,
    drilledIfGiven('drill', 'd_h', {
      says: 'Drill, by its name or diameter',
      whenLeftOut: 'the one of TAP.DRILL',
    }),
  ],
  steps: {
    l_c: {
      gives: 'length',
      expr: 'c*P',
      says: 'The tap’s chamfer below the full thread: it cuts no full thread itself',
    },
    d_p: { gives: 'length', expr: 'given(d_h) ? d_h : d_t', says: 'Diameter drilled' },
    ...drillPoint,
    z: { gives: 'length', expr: 'L + l_c + h', says: 'Full thread, chamfer and point' },
  },
  result: 'z',
  changes: [SERIES_CHANGE],
  sources: [
    derived(
      'The tap’s end stops at the foot of the full-diameter hole: its chamfer and the drill’s point lie below the full thread',
    ),
    commonPractice('Chamfer of 3 to 5 pitches for a plug tap, 1 to 2 for a bottoming tap; point of 118°'),
  ],
  notes: [
    'The full thread ends where the tap’s chamfer begins. A bottoming tap after a plug tap needs 2 pitches instead of 4.',
  ],
  cautions: [
    {
      says:
        'Nothing is left for chips: give a blind hole one or two pitches more, and a spiral-point tap, which pushes them ahead, several. ' +
        'Small taps with a male center need its length too. Check that the point does not come near a face, a waterway or the next plate.',
    },
  ],
  related: ['TAP.TRAVEL', 'TAP.DRILL', 'THREAD.ENGAGE', 'DRILL.POINT'],
});
