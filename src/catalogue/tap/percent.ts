import { procedure, type Values } from '../../core/define';
import { refuse } from '../../core/refusal';
import { drilled } from '../drills';
import { thread } from '../threads';
import { FORMING_RULE, holeInRange, PERCENT_NOTE, PERCENT_OF_THREAD, shareOfThread } from './hole';
import { tapKind } from './inputs';

const inputs = [thread, drilled('drill', 'd_h', 'Drill, by its name or diameter'), tapKind] as const;

export const tapPercent = procedure({
  name: 'TAP.PERCENT',
  summary: 'Percent of thread that a drill leaves for the tap.',
  inputs,
  gives: 'percent',
  method:
    '(d - drill)/(1.299*P) when cut, (d - drill)/(0.68*P) when formed; 1.299 P is twice 3/4 of the sharp height.',
  steps: {
    d: { gives: 'length', says: 'Basic major diameter', equation: 'of the thread' },
    P: { gives: 'length', says: 'Pitch', equation: 'of the thread' },
    d_h: { gives: 'length', says: 'Diameter of the drill', equation: 'of the drill' },
  },
  run: (x, show) => {
    const { major, pitch } = x.thread;
    const { diameter } = x.drill;
    if (diameter > major * (1 + 1e-12))
      refuse('drill', `is larger than the thread itself: ${x.thread.name} leaves nothing to cut`);
    show('d', major);
    show('P', pitch);
    show('d_h', diameter);
    return shareOfThread(x.thread, diameter, x.kind);
  },
  valid: holeInRange((x: Values<typeof inputs>) => ({
    thread: x.thread,
    kind: x.kind,
    diameter: x.drill.diameter,
  })),
  sources: [PERCENT_OF_THREAD, FORMING_RULE],
  notes: [
    PERCENT_NOTE,
    'The strength of a thread rises little above 60 to 65 %, the torque of the tap rises steeply (common practice): where the screw is long enough take the larger drill.',
  ],
  related: ['TAP.DRILL', 'THREAD.STRIP', 'DRILL.NEAREST'],
  checks: [
    {
      given: { thread: '1/4-20', drill: '#7' },
      expect: '75.44 %',
      within: 1e-4,
      from: 'tap maker’s technical formulas, p. 75: 75.44 % for 0.201 in (scribd.com/document/327450604)',
    },
    {
      given: { thread: 'M10', drill: '8.5 mm' },
      expect: '76.9800359 %',
      within: 1e-8,
      from: 'by hand: one pitch of 2 × 3/4 × 0.8660254 pitches',
    },
    {
      given: { thread: '1/4-20', drill: '0.2279 in', kind: 'form' },
      expect: '65 %',
      within: 1e-9,
      from: 'by hand: 0.0221/(0.68 × 0.05), the rule of 0.0068 a percent',
    },
    {
      given: { thread: 'M6', drill: '6 mm' },
      expect: '0 %',
      within: 1e-9,
      from: 'a hole as large as the thread leaves none',
      limit: true,
    },
    {
      given: { thread: 'M8', drill: '6.646835 mm' },
      expect: '83.3333 %',
      within: 1e-5,
      from: 'the basic minor diameter of ISO 724 leaves 5/8 H of 3/4 H',
      limit: true,
    },
  ],
});
