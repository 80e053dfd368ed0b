import { commonPractice, formula, input } from '../../core/define';

export const fillGate = formula({
  name: 'FILL.GATE',
  summary: 'Depth of an edge gate as a fraction of the wall that it feeds.',
  inputs: [
    input('wall', 's', 'length', {
      above: '0 mm',
      usual: ['0.4 mm', '8 mm'],
      says: 'Wall of the part at the gate',
    }),
    input('fraction', 'f', 'ratio', {
      above: 0,
      max: 1,
      default: 0.6,
      usual: [0.3, 1],
      says: 'Gate depth over wall',
    }),
  ],
  steps: { h: { gives: 'length', expr: 'f*s', says: 'A fraction of the wall' } },
  result: 'h',
  valid: [
    {
      holds: 'f >= 0.5 and f <= 0.75',
      says: 'Gates are usually half to three quarters of the wall: a thinner one freezes early, a thicker one leaves a scar.',
    },
  ],
  sources: [commonPractice('Gate depth 50 to 75 % of the wall, land 0.5 to 1 mm')],
  notes: ['Cut it shallow and open it after the first shots: steel comes off more easily than it goes back.'],
  related: ['FILL.SLITRATE', 'FILL.RUNNER'],
});
