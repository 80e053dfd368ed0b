import { choice, lookup, named, fromMemory, type Column, type Input } from '../../core/define';
import { Refusal } from '../../core/refusal';
import { FASTENER_SOURCES, SHOULDER_SCREWS, shoulderScrew, type ShoulderScrew } from '../../tables/fasteners';

const column = (says: string, from: (screw: ShoulderScrew) => number): Column<ShoulderScrew> => ({
  gives: 'length',
  says,
  from,
  source: ({ source }) => source,
});

const columns = {
  'shoulder max': column('largest shoulder', ({ shoulderMax }) => shoulderMax),
  'shoulder min': column('smallest shoulder', ({ shoulderMin }) => shoulderMin),
  'thread length': column('thread length', ({ threadLength }) => threadLength),
  'head dia': column('head diameter', ({ head }) => head),
  'head height': column('head height', ({ height }) => height),
  hex: column('hexagon across flats', ({ hex }) => hex),
  thread: {
    gives: 'text',
    says: 'thread',
    from: ({ thread }: ShoulderScrew) => thread,
    source: ({ source }: ShoulderScrew) => source,
  },
} as const;
type Property = keyof typeof columns;

const size: Input<'size', ShoulderScrew> = named<'size', ShoulderScrew>(
  'size',
  'size',
  {
    what: 'a nominal shoulder diameter such as 10 mm or "3/8 in"',
    read: (text): ShoulderScrew => {
      throw new Refusal(
        `is "${text}"; it takes a shoulder diameter, as a number or with its unit, such as "3/8 in"`,
      );
    },
    number: { kind: 'length', says: 'shoulder diameter', above: '0 mm', means: shoulderScrew },
  },
  { says: 'Nominal shoulder diameter' },
);

export const shoulderValue = lookup({
  name: 'SHOULDER.VALUE',
  summary: 'A dimension of a shoulder screw.',
  inputs: [size, choice('property', Object.keys(columns) as Property[], { says: 'Dimension wanted' })],
  columns,
  rows: () => SHOULDER_SCREWS.map((screw) => [`${screw.shoulder * 1000}`, screw] as const),
  sources: [
    FASTENER_SOURCES.isoShoulder,
    fromMemory('Shoulder limits of ASME B18.3: 0.002 to 0.004 in under nominal'),
  ],
  notes: [
    'A shoulder is made well below its nominal size: f9 leaves a 10 mm shoulder at 9.951 to 9.987 mm. Reckon the guide’s clearance from these limits.',
    'Two series are sold under this standard: ISO 7379 has 6.5, 8, 10, 13, 16, 20 and 25 mm; 6, 12 and 24 mm are the trade’s own.',
  ],
  related: ['SHOULDER.TRAVEL', 'FIT.GAP'],
});
