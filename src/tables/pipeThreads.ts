import { commonPractice, fromMemory, published, secondHand, type Source } from '../core/define';
import { nearestNames, UnknownName } from './names';
import { plainMarks, refuseComma } from './sizeText';

/** Tap drills of pipe threads, for air and water fittings. */

export type PipeKind = 'NPT' | 'G';
export const PIPE_KINDS = ['NPT', 'G'] as const satisfies readonly PipeKind[];

export interface PipeSize {
  /** Nominal size: `1/4`, `1-1/4`. */
  readonly size: string;
  /** The kind of thread that the word names, where it names one. */
  readonly kind?: PipeKind;
}

const INCH = 0.0254;
const mm = (size: number): number => size / 1000;

// ASME B1.20.1 taper, 60°: drilled straight and tapped without reaming, inches.
const NPT: Readonly<Record<string, number>> = {
  '1/16': 0.246,
  '1/8': 0.339,
  '1/4': 7 / 16,
  '3/8': 37 / 64,
  '1/2': 23 / 32,
  '3/4': 59 / 64,
  '1': 1 + 5 / 32,
  '1-1/4': 1.5,
  '1-1/2': 1 + 47 / 64,
  '2': 2 + 7 / 32,
};
// ISO 228-1 parallel, 55°, mm.
const G: Readonly<Record<string, number>> = {
  '1/16': 6.8,
  '1/8': 8.8,
  '1/4': 11.8,
  '3/8': 15.25,
  '1/2': 19,
  '5/8': 21,
  '3/4': 24.5,
  '1': 30.75,
  '1-1/4': 39.5,
  '1-1/2': 45.5,
  '2': 57,
};

const DRILLS: Readonly<Record<PipeKind, Readonly<Record<string, number>>>> = { NPT, G };

export const PIPE_SOURCES = {
  NPT: commonPractice(
    'Tap drills of NPT threads without reaming, as usual charts have them; 1/8 to 1 read in two such charts, the others from memory',
  ),
  smallerNPT: published(
    'Machinery’s Handbook, 31st edition, p. 1005, Table 24a (ANSI/ASME B94.9-2008): smaller drills, which give full threads over the gauge length alone',
  ),
  G: secondHand(
    'Tap drills of ISO 228-1 threads, as a page lists them; inside the minor diameter limits of ISO 228-1',
  ),
  limitsG: fromMemory('Largest minor diameters of ISO 228-1'),
} as const satisfies Readonly<Record<string, Source>>;

/** Diameter to drill, m; refused with the nearest sizes of that kind. */
export function pipeDrill(size: string, kind: PipeKind): number {
  const drill = DRILLS[kind][size];
  if (drill !== undefined) return kind === 'NPT' ? drill * INCH : mm(drill);
  throw new UnknownName(`${kind} size`, size, nearestNames(size, Object.keys(DRILLS[kind])));
}

/** Every size of a kind, smallest first. */
export const pipeSizes = (kind: PipeKind): readonly string[] =>
  Object.keys(DRILLS[kind]).sort((a, b) => pipeDrill(a, kind) - pipeDrill(b, kind));

const SIZE = String.raw`(?:(?<whole>[1-9])(?: ?- ?| ))?(?<fraction>[1-9]\d?/(?:16|8|4|2))|(?<only>[1-9])`;
const WRITTEN = new RegExp(
  `^(?:(?<before>G|NPT) ?)?(?:${SIZE})(?: ?(?:"|in\\b\\.?|inch\\b))?(?: ?- ?(?<count>\\d+(?:\\.\\d+)?))?(?:[ -]?(?<after>NPT|BSPP|G))?$`,
  'i',
);
/** Threads an inch belong to a size; one that does not fit is another thread. */
const COUNTS: Readonly<Record<PipeKind, Readonly<Record<string, number>>>> = {
  NPT: {
    '1/16': 27,
    '1/8': 27,
    '1/4': 18,
    '3/8': 18,
    '1/2': 14,
    '3/4': 14,
    '1': 11.5,
    '1-1/4': 11.5,
    '1-1/2': 11.5,
    '2': 11.5,
  },
  G: {
    '1/16': 28,
    '1/8': 28,
    '1/4': 19,
    '3/8': 19,
    '1/2': 14,
    '5/8': 14,
    '3/4': 14,
    '1': 11,
    '1-1/4': 11,
    '1-1/2': 11,
    '2': 11,
  },
};

/** `1/4`, `1/4"`, `1/4 NPT`, `1/4-18 NPT`, `G 1/4`, `G1 1/4`, `1/4 BSPP`. */
export function readPipe(given: string): PipeSize {
  refuseComma(given);
  const groups = WRITTEN.exec(plainMarks(given))?.groups;
  const word = (groups?.['before'] ?? groups?.['after'])?.toUpperCase();
  const kind: PipeKind | undefined = word === undefined ? undefined : word === 'NPT' ? 'NPT' : 'G';
  const size = [groups?.['whole'], groups?.['fraction'] ?? groups?.['only']].filter(Boolean).join('-');
  const kinds = kind ? [kind] : PIPE_KINDS;
  const count = groups?.['count'];
  const fits = kinds.some(
    (one) => DRILLS[one][size] !== undefined && (count === undefined || COUNTS[one][size] === Number(count)),
  );
  if (groups && fits && !(groups['before'] && groups['after'])) return { size, ...(kind ? { kind } : {}) };
  throw new UnknownName(
    'pipe thread',
    given,
    nearestNames(
      given,
      PIPE_KINDS.flatMap((one) => pipeSizes(one).map((of) => (one === 'G' ? `G ${of}` : `${of} NPT`))),
    ),
  );
}
