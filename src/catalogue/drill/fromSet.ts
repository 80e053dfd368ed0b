import { choice, derived, input, procedure, set, type Entry } from '../../core/define';
import { refuse } from '../../core/refusal';
import { drilledReading, type Drilled } from '../drills';

const drills = set('set', drilledReading, {
  says: 'Range of the drills there are, each by its name or diameter; blank cells are no entries',
});

type Entries = readonly Entry<Drilled>[];
type Rounding = 'nearest' | 'up' | 'down';

/** Conversions of one size leave rounding in the last digits, m. */
const SAME = 1e-9;

/** Smallest first; of equal ones, the one that stands first in the set alone. */
function inOrder(entries: Entries): Entries {
  const sorted = [...entries].sort((a, b) => a.means.diameter - b.means.diameter);
  return sorted.filter(
    ({ means }, i) => i === 0 || means.diameter - (sorted[i - 1]?.means.diameter ?? 0) > SAME,
  );
}

/** From which diameter on an entry is the one: as steps, the first from none at all. */
function stepsOf(entries: Entries, round: Rounding): (readonly [from: number, entry: Entry<Drilled>])[] {
  const sorted = inOrder(entries);
  return sorted.map((entry, i) => {
    const below = sorted[i - 1]?.means.diameter;
    const { diameter } = entry.means;
    if (round === 'down') return [diameter - SAME, entry];
    if (below === undefined) return [0, entry];
    return [(round === 'up' ? below : (below + diameter) / 2) + SAME, entry];
  });
}

const endsOf = (entries: Entries): { low: number; high: number } => {
  const sizes = entries.map(({ means }) => means.diameter);
  return { low: Math.min(...sizes) - SAME, high: Math.max(...sizes) + SAME };
};

export const drillFromSet = procedure({
  name: 'DRILL.FROMSET',
  summary: 'The drill of a set of one’s own that is nearest a diameter, as it is written there.',
  inputs: [
    input('diameter', 'D', 'length', {
      above: '0 mm',
      usual: ['0.2 mm', '52 mm'],
      says: 'Diameter wanted, such as TAP.DRILL gives it',
    }),
    drills,
    choice('round', ['nearest', 'up', 'down'], {
      default: 'nearest',
      says: 'Nearest, or next larger (up) or smaller (down)',
    }),
  ],
  gives: {
    by: 'set',
    // A set of names answers in words; one that holds diameters, with the cell as it is.
    word: (entries: Entries) =>
      entries.every(({ written }) => typeof written === 'string') ? 'names' : 'sizes',
    kinds: { names: 'text', sizes: 'length' },
  },
  method: 'The entry with the least difference; of two alike the smaller, of two of one size the first.',
  steps: {
    d: { gives: 'length', says: 'Diameter of that entry', equation: 'of the set' },
    delta: { gives: 'length', says: 'Its difference from what is wanted', equation: 'd - D' },
  },
  run: ({ diameter, set: entries, round }, show) => {
    const { low, high } = endsOf(entries);
    if (round === 'up' && diameter > high) refuse('set', 'has no drill so large');
    if (round === 'down' && diameter < low) refuse('set', 'has no drill so small');
    const found = stepsOf(entries, round)
      .filter(([from]) => diameter >= from)
      .at(-1)?.[1];
    if (!found) return refuse('set', 'has no drill for it');
    show('d', found.means.diameter);
    show('delta', found.means.diameter - diameter);
    return typeof found.written === 'string' ? found.written : found.means.diameter;
  },
  native: ({ diameter, set: of, round }, write) => {
    const entries = of.fixed();
    const way = round.fixed();
    const { low, high } = endsOf(entries);
    const names = entries.filter(({ written }) => typeof written === 'string').length;
    // Names and numbers in one column would need a unit each.
    if (names > 0 && names < entries.length) return undefined;
    if (way === 'up') write.refuse(`${diameter.text}>${high}`, 'set has no drill so large');
    if (way === 'down') write.refuse(`${diameter.text}<${low}`, 'set has no drill so small');
    return write.stepped(
      `Drills of a set, ${way}`,
      ['from (m)', names > 0 ? 'drill' : 'diameter (m)'],
      stepsOf(entries, way).map(([from, { means, written }]) => [
        from,
        typeof written === 'string' ? written : means.diameter,
      ]),
      diameter.text,
    );
  },
  valid: [
    {
      holds: ({ diameter, set: entries }) => {
        const { low, high } = endsOf(entries);
        return diameter >= low && diameter <= high;
      },
      says: 'The diameter wanted lies beyond the smallest or the largest drill of the set: the nearest may be far from it.',
    },
  ],
  sources: [derived('Least difference among the entries of the set')],
  notes: [
    'Entries are read as everywhere: "#7", "F", "7/32", "5.0 mm" are names, plain numbers diameters in the units of the call.',
    'With TAP.PERCENT see what the drill that you own leaves of the thread.',
  ],
  related: ['DRILL.NEAREST', 'TAP.DRILL', 'TAP.PERCENT'],
});
