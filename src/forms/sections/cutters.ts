import { holds, calls, type Section } from './section';

export const cutters: Section = {
  id: 'cutters',
  title: 'Cutter list',
  decide: 'speed and feed of every cutter, for its first chip.',
  danger:
    'Cutters break and throw pieces: guards closed, eye protection on, start below these figures with a long reach.',
  inputs: {
    workMetal: { first: 'P20', label: 'Metal that is cut' },
    chip: { first: '0.03 mm', label: 'Chip per tooth', like: ['CUT.FEED', 'chip'] },
    spindleLimit: { first: '10000 rpm', label: 'Fastest spindle speed', like: ['CUT.RPM', 'limit'] },
  },
  parts: [
    calls('CUT.SPEED', 'cutSpeed', 'Cutting speed', 'To start with, by the table; carbide, milling.', {
      metal: 'workMetal',
      tool: '"carbide"',
      operation: '"mill"',
    }),
    {
      type: 'table',
      title: 'Cutters',
      heads: ['Diameter', 'Teeth'],
      rows: [
        ['Roughing', '12 mm', 4],
        ['Pocket', '8 mm', 4],
        ['Ribs', '3 mm', 2],
        ['Finishing', '6 mm', 4],
        ['', '', 0],
      ],
      gives: [
        { head: 'Speed', formula: 'MOLD.CUT.RPM(cut_speed, {1}, spindle_limit, units)', kind: 'rotation' },
        { head: 'Feed', formula: 'MOLD.CUT.FEED({3}, {2}, chip, units)', kind: 'feedRate' },
      ],
    },
    holds('Every cutter has a feed', '{errors}=0', 'If it does not hold: a row shows why in its own words.'),
  ],
};
