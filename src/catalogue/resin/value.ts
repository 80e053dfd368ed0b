import { choice, fromMemory, lookup, named, type Column, secondHand } from '../../core/define';
import {
  findResin,
  RESIN_PROPERTIES,
  resinKind,
  RESINS,
  resinValue,
  type Resin,
  type ResinProperty,
} from '../../tables/resins';

const column = (property: ResinProperty): Column<Resin> => ({
  gives: resinKind(property),
  says: property,
  from: (resin) => resinValue(resin, property).value,
  source: (resin) => resinValue(resin, property).source,
});

export const resinValueOf = lookup({
  name: 'RESIN.VALUE',
  summary: 'A property of a resin from the table.',
  inputs: [
    named(
      'resin',
      'resin',
      { what: 'the name of a resin such as "PP" or "ABS"', read: findResin },
      { says: 'Resin' },
    ),
    choice('property', RESIN_PROPERTIES, { says: 'Property wanted' }),
  ],
  columns: Object.fromEntries(RESIN_PROPERTIES.map((property) => [property, column(property)])) as Record<
    ResinProperty,
    Column<Resin>
  >,
  rows: () => RESINS.map((resin) => [resin.name, resin] as const),
  sources: [
    secondHand(
      'General molding guide, a scan of R. J. Crawford, Plastics Engineering, and a table of vent depths, where SHOW.SOURCE with the resin and property says so',
    ),
    fromMemory('Handbook ranges for the rest'),
  ],
  notes: [
    '"shrinkage", "friction", "cavity pressure" and "expansion" are the middle of their range; "low" and "high" give its ends. "vent depth" is the shallow end.',
    'The diffusivity is the effective one, with the latent heat in it: it is not the quotient of conductivity, density and specific heat.',
    'Ejection temperature and the modulus at ejection are the least certain numbers. Where the maker’s data sheet is at hand, type its number instead of the resin’s name.',
  ],
  cautions: [
    {
      says: 'Typical values for a first sheet. The maker’s data sheet and safety data sheet for the grade in hand govern, melt temperatures above all.',
    },
  ],
  related: ['SHRINK.CAVITY', 'COOL.TIME', 'CLAMP.PRESSURE', 'FILL.VENT'],
});
