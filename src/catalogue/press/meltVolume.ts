import { derived, formula, input, named } from '../../core/define';
import { findResin, RESINS, resinValue, type Resin } from '../../tables/resins';
import { notesOfResin, RESIN_NAME } from '../resins';
import { namesOf } from '../../tables/names';

interface Densities extends Partial<Pick<Resin, 'notes'>> {
  readonly solid: number;
  readonly melt: number;
}

export const pressMeltVolume = formula({
  name: 'PRESS.MELTVOLUME',
  summary: 'Volume of melt that makes a solid volume of a resin.',
  inputs: [
    input('solidVolume', 'V_s', 'volume', {
      min: '0 cm³',
      usual: ['0.05 cm³', '500 cm³'],
      says: 'Volume of the cold shot: part, runner and sprue',
    }),
    named<'resin', Densities>(
      'resin',
      'resin',
      {
        ...RESIN_NAME,
        names: () => namesOf(RESINS),
        notes: notesOfResin,
        read: (text) => {
          const resin = findResin(text);
          return {
            solid: resinValue(resin, 'density').value,
            melt: resinValue(resin, 'melt density').value,
            notes: resin.notes,
          };
        },
        number: {
          kind: 'ratio',
          says: 'its solid density over its melt density',
          min: 1,
          max: 2,
          means: (ratio) => ({ solid: ratio, melt: 1 }),
        },
        binds: {
          q: {
            gives: 'ratio',
            says: 'Solid density over melt density',
            from: ({ solid, melt }) => solid / melt,
          },
        },
      },
      { says: 'Resin of the shot' },
    ),
  ],
  steps: { V: { gives: 'volume', expr: 'V_s*q', says: 'The same mass, hot' } },
  result: 'V',
  sources: [
    derived('Mass is kept: volume times density'),
    {
      kind: 'memory',
      cites: 'Melt densities of the resin table; solid densities as SHOW.SOURCE("RESIN.VALUE", …) tells',
    },
  ],
  related: ['PRESS.STROKE', 'PRESS.SHOT'],
});
