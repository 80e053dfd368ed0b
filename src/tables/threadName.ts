import { Refusal } from '../core/refusal';
import { AmbiguousName, nearestNames, UnknownName } from './names';
import { INCH, inLowestTerms, refuseComma, sizeText } from './sizeText';
import { type Thread, type ThreadSeries, THREADS, unSize } from './threads';

/** One way to read a designation; what was not written is absent. */
interface Written {
  /** Major diameters that the size can mean, inch for UN, mm for ISO. */
  readonly sizes: readonly { readonly system: Thread['system']; readonly size: number }[];
  /** Threads per inch for UN, pitch in mm for ISO. */
  readonly count?: number;
  readonly series?: readonly ThreadSeries[];
}

const SERIES: Readonly<Record<string, readonly ThreadSeries[]>> = {
  UNC: ['UNC'],
  UNF: ['UNF'],
  UNEF: ['UNEF'],
  NC: ['UNC'],
  NF: ['UNF'],
  NEF: ['UNEF'],
  COARSE: ['UNC', 'coarse'],
  FINE: ['UNF', 'fine'],
  'EXTRA FINE': ['UNEF'],
};
const WORD = Object.keys(SERIES).join('|');
/** A leading zero is a lost point or a slip. */
const WHOLE = String.raw`(?:0|[1-9]\d*)`;
const BETWEEN = String.raw`(?:\s*[-x]\s*|\s)`;

const UN = new RegExp(
  `^(?:(?<before>${WORD})[- ]+)?` +
    String.raw`(?:(?:#|(?:NO\b\.?|NUMBER\b)\s*#?)\s*(?<number>${WHOLE})` +
    String.raw`|(?:(?:(?<whole>${WHOLE})(?: ?- ?| ))?(?<over>${WHOLE}) ?/ ?(?<under>${WHOLE})|(?<plain>\d*\.\d+|${WHOLE}))(?<inch>${INCH})?)` +
    String.raw`(?:${BETWEEN}(?<count>${WHOLE}(?:\.\d+)?)(?:\s*TPI)?)?` +
    `(?:[- ]*(?<after>${WORD}))?$`,
);
/** `8/32 UNC`: the size and the threads per inch with a slash between them. */
const SLASHED = new RegExp(
  String.raw`^(?:#\s*)?(?<number>${WHOLE}) ?/ ?(?<count>${WHOLE})(?:[- ]*(?<after>${WORD}))?$`,
);
const ISO =
  /^(?:ISO )?M(?<fine>F)?\s*(?<size>[1-9]\d*(?:[.,]\d+)?)(?:(?:\s*[-x/]\s*|\s)(?<pitch>(?:0|[1-9]\d*)?[.,]\d+|[1-9]\d*))?(?:[- ]+(?<word>COARSE|FINE))?$/;
/** A metric size without its M, as it is looked for in a refusal. */
const ISO_WITHOUT_M = /^(?<size>\d+(?:\.\d+)?)\s*(?:MM)?\s*x\s*(?<pitch>\d*\.?\d+)\s*(?:MM)?$/;

/** What ends a full designation and names no other thread: tolerance class and hand. */
const UN_CLASS = /(?:[- ]+|(?<=[A-Z]))[123][AB]$/;
const ISO_CLASS = /[- ]+\d[EFGH](?:\d[EFGH])?(?:\/\d[EFGH](?:\d[EFGH])?)?$/;
const HAND = /(?:[- ]+)(?:[LR]H|(?:LEFT|RIGHT)[- ]HAND)$/;

const PIPE =
  /\b(?:NPT[FR]?|NPS[CFHM]?|BSP[PT]?|ANPT)\b|^(?:G|RP|RC|R|PT|PF|PS)\s*(?:\d+[- ])?\d+(?:\/\d+)?(?:$|[^\d/])/;
const STI = /\bSTI\b/;
const OTHER_FORM = /^(?:MJ|TR|W)\s*\d|\b(?:BS[WF]|ACME|UNJ[CEF]*|UNR[CEF]*)\b/;

const series = (groups: Readonly<Record<string, string | undefined>>): Pick<Written, 'series'> => {
  const word = groups['before'] ?? groups['after'];
  return word === undefined ? {} : { series: SERIES[word] ?? [] };
};

/** Every way to read a designation that the signs allow. */
function readings(text: string): Written[] {
  const plain = text.replace(HAND, '');
  return [...isoReadings(plain.replace(ISO_CLASS, '')), ...unReadings(plain.replace(UN_CLASS, ''))];
}

function isoReadings(text: string): Written[] {
  const groups = ISO.exec(text)?.groups;
  if (!groups) return [];
  const number = (written: string): number => Number(written.replace(',', '.'));
  const fine = groups['fine'] !== undefined || groups['word'] === 'FINE';
  // A size alone is the coarse thread.
  const only: ThreadSeries | undefined = fine
    ? 'fine'
    : groups['word'] === 'COARSE' || groups['pitch'] === undefined
      ? 'coarse'
      : undefined;
  return [
    {
      sizes: [{ system: 'ISO', size: number(groups['size'] ?? '') }],
      ...(groups['pitch'] === undefined ? {} : { count: number(groups['pitch']) }),
      ...(only ? { series: [only] } : {}),
    },
  ];
}

function unReadings(text: string): Written[] {
  const found: Written[] = [];
  const slashed = SLASHED.exec(text)?.groups;
  if (slashed)
    found.push({
      sizes: [{ system: 'UN', size: unSize(`#${slashed['number'] ?? ''}`) }],
      count: Number(slashed['count']),
      ...series(slashed),
    });
  const groups = UN.exec(text)?.groups;
  if (!groups || (groups['before'] !== undefined && groups['after'] !== undefined)) return found;
  const count = groups['count'] === undefined ? {} : { count: Number(groups['count']) };
  const sizes = unSizes(groups);
  if (sizes.length > 0) found.push({ sizes, ...count, ...series(groups) });
  return found;
}

function unSizes(groups: Readonly<Record<string, string | undefined>>): Written['sizes'] {
  const { number, whole, over, under, plain, inch, count } = groups;
  const un = (size: number) => ({ system: 'UN', size }) as const;
  if (number !== undefined) return [un(unSize(`#${number}`))];
  if (over !== undefined) {
    if (!inLowestTerms(Number(over), Number(under))) return [];
    return [un(Number(whole ?? 0) + Number(over) / Number(under))];
  }
  const size = Number(plain);
  if (inch !== undefined || plain?.includes('.')) return [un(size)];
  // A whole number is a numbered size or inches, and alone a metric size as well: 10 is #10 or M10.
  return [
    un(unSize(`#${plain ?? ''}`)),
    un(size),
    ...(count === undefined ? [{ system: 'ISO', size } as const] : []),
  ];
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
  (written.series === undefined || written.series.includes(thread.series));

/** How unlike two threads are: a step in diameter counts more than one in pitch. */
function nearest(given: string, text: string, written: readonly Written[]): string[] {
  const bare = ISO_WITHOUT_M.exec(text)?.groups;
  const looked: readonly Written[] = bare
    ? [{ sizes: [{ system: 'ISO', size: Number(bare['size']) }], count: Number(bare['pitch']) }, ...written]
    : written;
  if (looked.length === 0)
    return nearestNames(
      given,
      THREADS.map(({ name }) => name.replace(/ .*/, '')),
    );
  const away = (thread: Thread) =>
    Math.min(
      ...looked.flatMap(({ sizes, count, series: only }) =>
        sizes
          .filter(({ system }) => system === thread.system)
          .map(
            ({ size }) =>
              3 * Math.abs(Math.log(thread.printed.major / size)) +
              (count === undefined ? 0 : Math.abs(Math.log(countOf(thread) / count))) +
              (only === undefined || only.includes(thread.series) ? 0 : 0.01),
          ),
      ),
    );
  return [...THREADS]
    .map((thread) => ({ thread, away: away(thread) }))
    .sort((a, b) => a.away - b.away)
    .slice(0, 3)
    .map(({ thread }) => thread.name);
}

function refuseOtherKinds(given: string, text: string): void {
  const other = (says: string): Refusal => new Refusal(`is "${given}", ${says}`, undefined, '#N/A');
  if (PIPE.test(text))
    throw other(
      'a pipe thread, which is larger than its name: TAP.PIPE gives the drill of NPT and G threads',
    );
  if (STI.test(text))
    throw other(
      'the tap of a wire thread insert: give the thread of the screw, and TAP.DRILL the kind "wire insert"',
    );
  if (OTHER_FORM.test(text))
    throw other('a thread of another form; the tables hold UNC, UNF, UNEF and ISO metric threads');
}

/**
 * The thread of a designation as people write it: `10-32`, `#10-32 UNF`, `8/32 UNC`, `1/4"-20`, `1/4 x 20`, `.250-20`,
 * `1 1/4-7`, `M6`, `M10 × 1.25`, `M10 x 1.25 - 6H`, with or without tolerance class and hand. A metric size alone is the coarse
 * thread (ISO 261); an inch size alone is refused by naming its threads.
 */
export function findThread(given: string): Thread {
  const text = sizeText(given);
  refuseOtherKinds(given, text);
  const metric = /^(?:ISO )?M/.test(text);
  if (!metric) refuseComma(given);
  const written = readings(text);
  const found = THREADS.filter((thread) => written.some((one) => matches(thread, one)));
  const [only] = found;
  // A size alone, or one without its M, is no designation, even where the tables have one thread of it.
  const bare = written.some(({ count, series: word }) => count === undefined && word === undefined);
  if (only && found.length === 1 && !bare && metric === (only.system === 'ISO')) return only;
  const choices = (bare ? found.filter((one) => one.series !== 'fine') : found).map(({ name }) => name);
  if (choices.length > 1) throw new AmbiguousName('thread', given, choices);
  throw new UnknownName('thread', given, nearest(given, text, written));
}
