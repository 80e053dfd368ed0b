import {
  choice,
  commonPractice,
  fromMemory,
  lookup,
  named,
  secondHand,
  type Column,
} from '../../core/define';
import {
  findResin,
  RESIN_PROPERTIES,
  resinKind,
  RESINS,
  resinValue,
  type Resin,
  type ResinProperty,
} from '../../tables/resins';
import { notesOfResin, RESIN_NAME } from '../resins';
import { namesOf } from '../../tables/names';

const column = (property: ResinProperty): Column<Resin> => ({
  gives: resinKind(property),
  says: property,
  from: (resin) => resinValue(resin, property).value,
  source: (resin) => resinValue(resin, property).source,
});

const NOTE: Column<Resin> = {
  gives: 'text',
  says: 'note',
  from: ({ notes }) => (notes.length === 0 ? 'Nothing to note.' : notes.join(' ')),
  source: commonPractice('what a molder should know of the row; the safety data sheet governs'),
};

export const resinValueOf = lookup({
  name: 'RESIN.VALUE',
  summary: 'A property of a resin from the table.',
  inputs: [
    named(
      'resin',
      'resin',
      { ...RESIN_NAME, read: findResin, names: () => namesOf(RESINS), notes: notesOfResin },
      { says: 'Resin' },
    ),
    choice('property', [...RESIN_PROPERTIES, 'note'], { says: 'Property wanted' }),
  ],
  columns: {
    ...(Object.fromEntries(RESIN_PROPERTIES.map((property) => [property, column(property)])) as Record<
      ResinProperty,
      Column<Resin>
    >),
    note: NOTE,
  },
  rows: () => RESINS.map((resin) => [resin.name, resin] as const),
  sources: [
    secondHand(
      'Molding guides, lists of shrinkage, a scan of R. J. Crawford, Plastics Engineering, and a table of vent depths: SHOW.SOURCE with the resin and property names the one',
    ),
    fromMemory('Handbook ranges for the rest'),
  ],
  notes: [
    '"shrinkage", "friction", "cavity pressure" and "expansion" are the middle of their range; "low" and "high" give its ends. "vent depth" is the shallow end.',
    'The diffusivity is the effective one, with the latent heat in it: it is not the quotient of conductivity, density and specific heat.',
    'Shrinkage is that of ISO 294-4: (cavity − part)/cavity, both at 23 °C; of filled grades the range runs from along the flow to across it. Heat content is what a gram gives off from melt to ejection; sources differ by a third.',
    'A bare name is the unfilled grade: "PBT" is not "PBT-GF30". "nylon", "polyethylene" and "polyester" are refused by naming their members.',
    'Ejection temperature and the modulus at ejection are the least certain numbers. Where the maker’s data sheet is at hand, type its number instead of the resin’s name.',
  ],
  cautions: [
    {
      says: 'Typical values for a first sheet. The maker’s data sheet and safety data sheet for the grade in hand govern, melt temperatures above all.',
    },
  ],
  related: ['SHRINK.CAVITY', 'COOL.TIME', 'CLAMP.PRESSURE', 'FILL.VENT'],
});
