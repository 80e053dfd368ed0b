import { choice, derived, lookup, type Column, secondHand } from '../../core/define';
import { minorDiameter, pitchDiameter, stressArea, THREADS, type Thread } from '../../tables/threads';
import { thread } from '../threads';

const PROFILE = derived(
  '60° profile of ISO 68-1 and ASME B1.1 (ISO 724): from basic major diameter and pitch',
);

const columns = {
  major: {
    gives: 'length',
    says: 'major diameter',
    from: ({ major }) => major,
    source: ({ source }) => source,
  },
  pitch: { gives: 'length', says: 'pitch', from: ({ pitch }) => pitch, source: ({ source }) => source },
  pitchdia: { gives: 'length', says: 'pitch diameter d - 0.6495 P', from: pitchDiameter, source: PROFILE },
  minor: {
    gives: 'length',
    says: 'minor diameter of the hole, d - 1.0825 P',
    from: minorDiameter,
    source: PROFILE,
  },
  stressarea: {
    gives: 'area',
    says: 'tensile stress area',
    from: stressArea,
    source: ({ system }) =>
      system === 'ISO'
        ? derived('ISO 898-1: π/4 (d - 0.9382 P)²')
        : derived('ASME B1.1 and FED-STD-H28/2B: π/4 (d - 0.9743 P)²'),
  },
  tpi: {
    gives: 'perInch',
    says: 'threads per inch',
    from: ({ pitch }) => 1 / pitch,
    source: ({ source }) => source,
  },
} as const satisfies Readonly<Record<string, Column<Thread>>>;

export const threadValue = lookup({
  name: 'THREAD.VALUE',
  summary: 'Basic dimension of a thread.',
  inputs: [
    thread,
    choice('property', ['major', 'pitch', 'pitchdia', 'minor', 'stressarea', 'tpi'], {
      says: 'Dimension wanted; minor is that of the hole',
    }),
  ],
  columns,
  rows: () => THREADS.map((row) => [row.name, row] as const),
  sources: [
    secondHand(
      'ASME B1.1 sizes (BelfrySCAD/BOSL2 screws.scad); ISO 261 and ISO 262 sizes (shaise/FreeCAD_FastenersWB)',
    ),
    PROFILE,
    derived(
      'Stress areas: ISO 898-1 for metric threads, ASME B1.1 for inch threads, which take different roots',
    ),
  ],
  notes: [
    'Basic dimensions, from which the limits of THREAD.LIMIT depart. Threads per inch are given for metric threads too.',
    'A metric size alone is the coarse thread; an inch size alone is refused by naming its threads.',
  ],
  related: ['THREAD.LIMIT', 'TAP.DRILL', 'SCREW.CLASSLOAD'],
});
