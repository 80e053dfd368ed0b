import { derived, formula, fromMemory, input } from '../../core/define';
import {
  blockMetal,
  draft,
  friction,
  frictionAngle,
  insertMetal,
  push,
  SINK_SCATTER,
  smallSink,
  stop,
  stopHasGap,
  stoppedSink,
} from './inputs';

export const seatWedgeSink = formula({
  name: 'SEAT.WEDGESINK',
  summary: 'Axial elastic sink of a wedge with two flat flanks under a push, with or without an axial stop.',
  inputs: [
    push,
    draft,
    friction,
    input('width', 'w', 'length', {
      above: '0 mm',
      usual: ['2 mm', '300 mm'],
      says: 'Mean width of the insert from flank to flank',
    }),
    input('breadth', 'B', 'length', {
      above: '0 mm',
      usual: ['1 mm', '300 mm'],
      says: 'Breadth of a flank, across the push',
    }),
    input('seatHeight', 'L', 'length', {
      above: '0 mm',
      usual: ['1 mm', '200 mm'],
      says: 'Height of contact of a flank, along the push',
    }),
    insertMetal,
    blockMetal,
    ...stop,
  ],
  refuse: [stopHasGap],
  steps: {
    ...frictionAngle,
    k_i: { gives: 'stiffness', expr: 'E_i*B*L/w', says: 'The insert squeezed across its width' },
    k_o: {
      gives: 'stiffness',
      expr: 'E_o*sqrt(B*L)/(2*0.95*(1 - nu_o^2))',
      says: 'Both walls, each a half-space under an even patch: mean displacement 0.95 S (1−ν²)/(E √(B L))',
    },
    K: {
      gives: 'stiffness',
      expr: '4*tan(alpha)*tan(alpha + phi)/(1/k_i + 1/k_o)',
      says: 'Along the push: half of F spreads each flank, and both slide down the taper',
    },
    ...stoppedSink,
    p_f: {
      gives: 'pressure',
      expr: 'K*z/(2*B*L*tan(alpha + phi))',
      says: 'Mean pressure on a flank, which squeezes the insert and dents the wall',
    },
  },
  result: 'z',
  strength: [
    { stress: 'p_f', of: 'blockMetal' },
    { stress: 'p_f', of: 'insertMetal' },
  ],
  valid: [
    smallSink,
    {
      holds: 'max(B, L) <= 2*min(B, L)',
      says: 'The flank is longer than twice its other side: the factor 0.95 of a square patch overstates the sink of the walls (0.88 at 3 to 1).',
    },
  ],
  sources: [
    derived('Free body of the wedge; squeezed block between two elastic half-spaces'),
    fromMemory(
      'Timoshenko, Theory of Elasticity: mean displacement of an evenly loaded square on a half-space, factor 0.95',
    ),
  ],
  notes: [
    'The pocket’s walls count as thick, and the margin is that of the flanks alone. A thin wall beside the wedge bends as well: add PLATE.WALL under the spreading force, and look at its margin.',
    SINK_SCATTER,
  ],
  cautions: [
    { when: 'mu >= tan(alpha)', says: 'Self-locking: the insert stays sunk when the push is gone.' },
    { says: 'The push presses the pocket apart: see SEAT.SPREAD for what its walls bear.' },
  ],
  related: ['SEAT.SINK', 'SEAT.SPREAD', 'PLATE.WALL'],
});
