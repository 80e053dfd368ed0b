import { choice, lookup, named, type Column, type Input } from '../../core/define';
import { Refusal } from '../../core/refusal';
import { EJECTOR_PINS, ejectorPin, FASTENER_SOURCES, type EjectorPin } from '../../tables/fasteners';

const column = (says: string, from: (pin: EjectorPin) => number): Column<EjectorPin> => ({
  gives: 'length',
  says,
  from,
});

const columns = {
  max: column('largest diameter', ({ max }) => max),
  min: column('smallest diameter', ({ min }) => min),
  'head dia': column('head diameter', ({ head }) => head),
  'head height': column('head height', ({ height }) => height),
} as const;
type Property = keyof typeof columns;

const size: Input<'size', EjectorPin> = named<'size', EjectorPin>(
  'size',
  'size',
  {
    what: 'a nominal diameter such as 4 mm',
    read: (text): EjectorPin => {
      throw new Refusal(`is "${text}"; it takes a diameter, as a number or with its unit, such as "4 mm"`);
    },
    number: { kind: 'length', says: 'nominal diameter', above: '0 mm', means: ejectorPin },
  },
  { says: 'Nominal diameter of the pin' },
);

export const pinValue = lookup({
  name: 'PIN.VALUE',
  summary: 'Limits of size and the head of a metric ejector pin.',
  inputs: [size, choice('property', Object.keys(columns) as Property[], { says: 'Dimension wanted' })],
  columns,
  rows: () => EJECTOR_PINS.map((pin) => [`${pin.diameter * 1000}`, pin] as const),
  sources: [FASTENER_SOURCES.ejectorPin],
  notes: [
    'From memory of ISO 6751: measure the pin that you have before you counterbore for its head. Inch pins are not in the table, as no source of them was read.',
  ],
  related: ['PIN.BUCKLE', 'PIN.FLASH', 'FIT.GAP'],
});
