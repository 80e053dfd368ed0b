import { choice, lookup, named, type Column, type Input } from '../../core/define';
import { Refusal } from '../../core/refusal';
import { dowel, DOWELS, FASTENER_SOURCES, type Dowel } from '../../tables/fasteners';

const column = (says: string, from: (pin: Dowel) => number | undefined): Column<Dowel> => ({
  gives: 'length',
  says,
  from,
  source: ({ source }) => source,
});

const columns = {
  max: column('largest diameter', ({ max }) => max),
  min: column('smallest diameter', ({ min }) => min),
  'shortest length': column('shortest length of the standard', ({ lengths }) => lengths?.[0]),
  'longest length': column('longest length of the standard', ({ lengths }) => lengths?.[1]),
} as const;
type Property = keyof typeof columns;

const size: Input<'size', Dowel> = named<'size', Dowel>(
  'size',
  'size',
  {
    what: 'a nominal diameter such as 6 mm or "1/4 in"',
    read: (text): Dowel => {
      throw new Refusal(`is "${text}"; it takes a diameter, as a number or with its unit, such as "1/4 in"`);
    },
    number: { kind: 'length', says: 'nominal diameter', above: '0 mm', means: dowel },
  },
  { says: 'Nominal diameter of the pin' },
);

export const dowelValue = lookup({
  name: 'DOWEL.VALUE',
  summary: 'Limits of size and lengths of a hardened dowel pin.',
  inputs: [size, choice('property', Object.keys(columns) as Property[], { says: 'Dimension wanted' })],
  columns,
  rows: () => DOWELS.map((pin) => [`${pin.diameter * 1000}`, pin] as const),
  sources: [FASTENER_SOURCES.isoDowel, FASTENER_SOURCES.inchDowel],
  notes: [
    'Metric pins are ISO 8734, m6; inch pins are the standard series of ASME B18.8.2, 0.0002 in over nominal, ± 0.0001 in.',
    'The table has lengths for metric pins alone.',
  ],
  related: ['DOWEL.PRESS', 'FIT.GAP'],
});
