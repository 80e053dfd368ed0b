import { commonPractice, lookup, named, type Source } from '../../core/define';
import { findResin, RESINS, resinValue, type Resin } from '../../tables/resins';
import { notesOfResin, RESIN_NAME, type ResinNumber } from '../resins';
import { namesOf } from '../../tables/names';

interface VentDepth extends ResinNumber {
  readonly source: Source;
}

const ventDepth = (resin: Resin): VentDepth => ({ ...resinValue(resin, 'vent depth'), notes: resin.notes });
const OWN = commonPractice('A vent depth of the person’s own');

export const fillVent = lookup({
  name: 'FILL.VENT',
  summary: 'Depth to cut a vent for a resin: the shallow end of its range.',
  inputs: [
    named<'resin', VentDepth>(
      'resin',
      'resin',
      {
        ...RESIN_NAME,
        names: () => namesOf(RESINS),
        notes: notesOfResin,
        read: (text) => ventDepth(findResin(text)),
        number: {
          kind: 'length',
          says: 'its vent depth',
          above: '0 mm',
          means: (value) => ({ value, source: OWN }),
        },
      },
      { says: 'Resin' },
    ),
  ],
  columns: {
    depth: {
      gives: 'length',
      says: 'Vent depth',
      from: ({ value }) => value,
      source: ({ source }) => source,
    },
  },
  rows: () => RESINS.map((resin) => [resin.name, ventDepth(resin)] as const),
  sources: [
    ventDepth(findResin('PP')).source,
    commonPractice('The shallow end first: a vent is deepened more easily than filled up'),
  ],
  notes: [
    'Land about 1.5 mm long, then a relief of 0.5 mm to the outside (common practice). A press of low pressure can often use the deep end: ' +
      'RESIN.VALUE gives it as "vent depth high".',
  ],
  cautions: [
    {
      says: 'A vent deeper than this flashes, and thin flash is sharp: trim it with care, and keep the vents clear of deposit.',
    },
  ],
  related: ['FILL.VENTFLOW', 'FILL.BURN', 'PIN.FLASH', 'RESIN.VALUE'],
});
