import { holds, type Section } from './section';

export const holes: Section = {
  id: 'holes',
  title: 'Hole schedule',
  decide: 'the drill of every tapped hole.',
  danger: 'Chips cut and a drill that grabs throws the work: clamp every plate, no gloves at the spindle.',
  inputs: {
    percent: {
      first: 70,
      label: 'Percent of thread',
      note: '65 to 75 in aluminum, 60 to 75 in steel (common practice).',
      like: ['TAP.DRILL', 'percent'],
    },
    series: { first: 'all', label: 'Drills to choose from', like: ['TAP.DRILL', 'series'] },
  },
  parts: [
    {
      type: 'table',
      title: 'Tapped holes',
      heads: ['Thread', 'Holes'],
      rows: [
        ['Insert from behind', 'M6', 2],
        ['Clamp plate', 'M8', 4],
        ['Ejector plate', 'M5', 4],
        ['Eyebolt', 'M12', 1],
        ['Nozzle ring', '10-32', 3],
        ['', '', 0],
      ],
      gives: [
        { head: 'Drill', formula: 'MOLD.TAP.DRILL({1}, percent, "cut", series, units)', kind: 'length' },
        { head: 'Its name', formula: 'MOLD.TAP.DRILLNAME({1}, percent, "cut", series, units)', kind: 'text' },
      ],
    },
    holds('Every thread has a drill', '{errors}=0', 'If it does not hold: a row shows why in its own words.'),
  ],
};
