import { choice, fromMemory, lookup, named, type Column, secondHand } from '../../core/define';
import type { Kind } from '../../core/quantity';
import { findMetal, metalSource, METALS, type Metal, type MetalProperty } from '../../tables/metals';

const column = (
  property: MetalProperty,
  gives: Kind,
  from: (metal: Metal) => number | undefined,
): Column<Metal> => ({
  gives,
  says: property,
  from,
  source: (metal) => metalSource(metal, property),
});

const columns: Readonly<Record<MetalProperty, Column<Metal>>> = {
  modulus: column('modulus', 'pressure', ({ modulus }) => modulus),
  poisson: column('poisson', 'ratio', ({ poisson }) => poisson),
  expansion: column('expansion', 'expansion', ({ expansion }) => expansion),
  density: column('density', 'density', ({ density }) => density),
  conductivity: column('conductivity', 'conductivity', ({ conductivity }) => conductivity),
  'specific heat': column('specific heat', 'specificHeat', ({ specificHeat }) => specificHeat),
  yield: column('yield', 'pressure', (metal) => metal.yield),
};

export const metalValue = lookup({
  name: 'METAL.VALUE',
  summary: 'A property of a metal of molds, plates and pins from the table.',
  inputs: [
    named(
      'metal',
      'metal',
      { what: 'the name of a metal such as "P20" or "6061-T6"', read: findMetal },
      { says: 'Metal' },
    ),
    choice('property', Object.keys(columns) as MetalProperty[], { says: 'Property wanted' }),
  ],
  columns,
  rows: () => METALS.map((metal) => [metal.name, metal] as const),
  sources: [
    secondHand('P20 data sheets, where SHOW.SOURCE with the metal and property says so'),
    fromMemory('Handbook values at room temperature for the rest'),
  ],
  notes: [
    'Room temperature to 100 °C. Conductivity is in W/(m·K) and specific heat in J/(g·K) in both systems.',
  ],
  cautions: [
    {
      says: 'Yield is typical, not guaranteed: where a failure can hurt someone, use the certificate of the bar in hand.',
    },
  ],
  related: ['SEAT.SINK', 'HEAT.GROWTH', 'PLATE.SAG'],
});
