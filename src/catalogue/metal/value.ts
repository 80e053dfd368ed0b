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
  findMetal,
  METAL_PROPERTIES,
  metalKind,
  METALS,
  metalSource,
  missingOf,
  propertyOf,
  type Metal,
  type MetalProperty,
} from '../../tables/metals';
import { METAL_NAME, notesOfMetal } from '../metals';
import { namesOf } from '../../tables/names';

const column = (property: MetalProperty): Column<Metal> => ({
  gives: metalKind(property),
  says: property,
  from: (metal) => propertyOf(metal, property),
  missing: (metal) => missingOf(metal, property),
  source: (metal) => metalSource(metal, property),
});

const NOTE: Column<Metal> = {
  gives: 'text',
  says: 'note',
  from: ({ note = 'Nothing to note.' }) => note,
  source: commonPractice('what a shop should know of the row'),
};

export const metalValue = lookup({
  name: 'METAL.VALUE',
  summary: 'A property of a metal of molds, plates and pins from the table.',
  inputs: [
    named(
      'metal',
      'metal',
      { ...METAL_NAME, read: findMetal, names: () => namesOf(METALS), notes: notesOfMetal },
      { says: 'Metal' },
    ),
    choice('property', [...METAL_PROPERTIES, 'note'], { says: 'Property wanted' }),
  ],
  columns: {
    ...(Object.fromEntries(METAL_PROPERTIES.map((property) => [property, column(property)])) as Record<
      MetalProperty,
      Column<Metal>
    >),
    note: NOTE,
  },
  rows: () => METALS.map((metal) => [metal.name, metal] as const),
  sources: [
    secondHand(
      'Makers’ and dealers’ data sheets and pages that quote handbooks; SHOW.SOURCE with the metal and property names the one',
    ),
    fromMemory('Handbook values at room temperature for the rest'),
  ],
  notes: [
    'Room temperature to 100 °C. Conductivity is in W/(m·K) and specific heat in J/(g·K) in both systems.',
    'A bare name is one state of the metal, which the note tells: P20 prehard, H13 and 4140 annealed, 6061 as T6. Of tool steels without a state the strength is that of the annealed bar. ' +
      '"steel" gives modulus, Poisson’s ratio, expansion and density alone; "aluminum" or "stainless" is refused by naming the alloys.',
  ],
  cautions: [
    {
      says: 'Yield is typical, not guaranteed: where a failure can hurt someone, use the certificate of the bar in hand.',
    },
  ],
  related: ['SEAT.SINK', 'HEAT.GROWTH', 'PLATE.SAG'],
});
