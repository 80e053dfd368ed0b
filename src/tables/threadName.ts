import { AmbiguousName, nearestNames, plainSigns, UnknownName } from './names';
import { type Thread, THREADS, unSize } from './threads';

/** A designation taken apart; what was not written is absent. */
interface Written {
  /** Major diameters that the size can mean, inch for UN, mm for ISO. */
  readonly sizes: readonly { readonly system: Thread['system']; readonly size: number }[];
  /** Threads per inch for UN, pitch in mm for ISO. */
  readonly count?: number;
  readonly series?: Thread['series'];
}

const SIZE = String.raw`#\s*\d+|\d+[- ]+\d+/\d+|\d+/\d+|\d*\.\d+|\d+`;
const UN = new RegExp(`^(${SIZE})(?:\\s*[-x]\\s*|\\s+|$)(\\d+(?:\\.\\d+)?)?\\s*(UNC|UNF|UNEF|NC|NF|NEF)?$`);
const ISO = /^M(F?)\s*(\d+(?:\.\d+)?)(?:\s*[-x/]\s*(\d*\.?\d+))?(?:\s+(COARSE|FINE))?$/;

/** Tolerance class at the end of a full designation (`-2B`, `-6H`, `-5g6g`): it names no other thread. */
const CLASS = /[- ]+(?:[123][AB]|\d[EFGH](?:\d[EFGH])?)$/;

/** A designation with no choices left open in signs and spelling. */
const tidy = (given: string): string =>
  plainSigns(given)
    .toUpperCase()
    .replace(/X/g, 'x')
    .replace(/["″]|\bIN\b\.?/g, '')
    .replace(/^(?:NO\b\.?|NUMBER)\s*/, '#')
    .replace(/(\d),(\d)/g, '$1.$2')
    .replace(/(\d) *- *(?=\d+\/)/, '$1-')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(CLASS, '');

function read(given: string): Written | undefined {
  const text = tidy(given);
  const iso = ISO.exec(text);
  if (iso) {
    const [, mf, size, pitch, word] = iso;
    return {
      sizes: [{ system: 'ISO', size: Number(size) }],
      ...(pitch === undefined ? {} : { count: Number(pitch) }),
      ...(mf || word === 'FINE' ? { series: 'fine' } : pitch === undefined ? { series: 'coarse' } : {}),
    };
  }
  const un = UN.exec(text);
  if (!un) return undefined;
  const [, size = '', tpi, word] = un;
  const inch = size.includes('.')
    ? Number(size)
    : unSize(size.replace(/\s+(?=\d)/, size.startsWith('#') ? '' : '-'));
  const whole = /^\d+$/.test(size);
  const sizes: { system: Thread['system']; size: number }[] = [{ system: 'UN', size: inch }];
  if (whole) sizes.unshift({ system: 'UN', size: unSize(`#${size}`) });
  // A bare number may be a metric size as well: 10 is #10 or M10.
  if (whole && tpi === undefined && word === undefined) sizes.push({ system: 'ISO', size: inch });
  return {
    sizes,
    ...(tpi === undefined ? {} : { count: Number(tpi) }),
    ...(word === undefined ? {} : { series: (word.startsWith('U') ? word : `U${word}`) as Thread['series'] }),
  };
}

/** Sizes are written with three decimals or more: `.312-18` is 5/16. */
const SAME_SIZE = 0.0006;

const sameSize = (thread: Thread, { sizes }: Written): boolean =>
  sizes.some(
    ({ system, size }) => system === thread.system && Math.abs(thread.printed.major - size) < SAME_SIZE,
  );

const countOf = (thread: Thread): number => (thread.system === 'UN' ? thread.tpi : thread.printed.pitch);

const matches = (thread: Thread, written: Written): boolean =>
  sameSize(thread, written) &&
  (written.count === undefined || countOf(thread) === written.count) &&
  (written.series === undefined || thread.series === written.series);

/** How unlike two threads are: a step in diameter counts more than one in pitch. */
function nearest(given: string, written: Written | undefined): string[] {
  if (!written)
    return nearestNames(
      given,
      THREADS.map(({ name }) => name.replace(/ .*/, '')),
    );
  const away = (thread: Thread) =>
    Math.min(
      ...written.sizes
        .filter(({ system }) => system === thread.system)
        .map(
          ({ size }) =>
            3 * Math.abs(Math.log(thread.printed.major / size)) +
            (written.count === undefined ? 0 : Math.abs(Math.log(countOf(thread) / written.count))) +
            (written.series === undefined || written.series === thread.series ? 0 : 0.01),
        ),
    );
  return [...THREADS]
    .map((thread) => ({ thread, away: away(thread) }))
    .sort((a, b) => a.away - b.away)
    .slice(0, 3)
    .map(({ thread }) => thread.name);
}

/**
 * The thread of a designation as people write it: `10-32`, `#10-32 UNF`, `1/4-20`, `.250-20`, `1 1/4-7`, `M6`,
 * `M10 × 1.25`, `MF10x1.25`, with or without the tolerance class. A metric size alone is the coarse thread (ISO 261);
 * an inch size alone is refused by naming its threads.
 */
export function findThread(given: string): Thread {
  const written = read(given);
  const found = written ? THREADS.filter((thread) => matches(thread, written)) : [];
  const [only] = found;
  const bare = written?.count === undefined && written?.series === undefined;
  if (only && found.length === 1 && !bare) return only;
  const choices = (bare ? found.filter(({ series }) => series !== 'fine') : found).map(({ name }) => name);
  if (choices.length > 1) throw new AmbiguousName('thread', given, choices);
  throw new UnknownName('thread', given, nearest(given, written));
}
