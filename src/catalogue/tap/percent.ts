import { procedure, type Values } from '../../core/define';
import { refuse } from '../../core/refusal';
import { drilled } from '../drills';
import { thread } from '../threads';
import {
  FORMING_RULE,
  fullDiameter,
  holeInRange,
  nativeNarrowing,
  PERCENT_EQUATION,
  PERCENT_NOTE,
  PERCENT_OF_THREAD,
  shareOfThread,
  threadColumns,
  WIRE_INSERT,
  WIRE_INSERT_NOTE,
} from './hole';
import { tapKind } from './inputs';

const ROUNDING = 1e-12;

const inputs = [thread, drilled('drill', 'd_h', 'Drill, by its name or diameter'), tapKind] as const;

export const tapPercent = procedure({
  name: 'TAP.PERCENT',
  summary: 'Percent of thread that a drill leaves for the tap.',
  inputs,
  gives: 'percent',
  method: `${PERCENT_EQUATION}; 1.299 P is twice 3/4 of the sharp height.`,
  steps: {
    d: { gives: 'length', says: 'Basic major diameter', equation: 'of the thread' },
    P: { gives: 'length', says: 'Pitch', equation: 'of the thread' },
    d_h: { gives: 'length', says: 'Diameter of the drill', equation: 'of the drill' },
  },
  run: (x, show) => {
    const { major, pitch } = x.thread;
    const { diameter } = x.drill;
    if (diameter > fullDiameter(x.thread, x.kind) * (1 + ROUNDING))
      refuse('drill', `is larger than the thread itself: ${x.thread.name} leaves nothing to cut`);
    show('d', major);
    show('P', pitch);
    show('d_h', diameter);
    return shareOfThread(x.thread, diameter, x.kind);
  },
  native: ({ thread: t, drill, kind }, write) => {
    const [of, hole] = [kind.fixed(), drill.bound('d_h')];
    const { full, narrowed } = nativeNarrowing(t.look(threadColumns), of);
    write.refuse(`${hole}>${full}*${1 + ROUNDING}`, 'drill is larger than the thread itself');
    return `(${full}-${hole})/(${narrowed})`;
  },
  valid: holeInRange((x: Values<typeof inputs>) => ({
    thread: x.thread,
    kind: x.kind,
    diameter: x.drill.diameter,
  })),
  sources: [PERCENT_OF_THREAD, FORMING_RULE, WIRE_INSERT],
  notes: [
    PERCENT_NOTE,
    WIRE_INSERT_NOTE,
    'The strength of a thread rises little above 60 to 65 %, the torque of the tap rises steeply (common practice): where the screw is long enough take the larger drill.',
  ],
  related: ['TAP.DRILL', 'THREAD.STRIP', 'DRILL.NEAREST'],
});
