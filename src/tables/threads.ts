import { fromMemory, type Source, secondHand } from '../core/define';

/**
 * Screw threads of the 60° profile: the unified inch series (ASME B1.1) and ISO metric threads (ISO 261).
 * Only what no formula gives is stored: the designations. Diameters and areas follow from major diameter and pitch.
 */

export type ThreadSeries = 'UNC' | 'UNF' | 'UNEF' | 'coarse' | 'fine';

export interface Thread {
  /** As a drawing has it: `1/4-20 UNC`, `#10-32 UNF`, `M6`, `M10x1.25`. */
  readonly name: string;
  readonly series: ThreadSeries;
  readonly system: 'UN' | 'ISO';
  /** Basic major diameter and pitch as the standard prints them: inch for UN, millimetre for ISO. */
  readonly printed: { readonly major: number; readonly pitch: number };
  /** Threads per inch; `25.4/P` for ISO. */
  readonly tpi: number;
  /** Basic major diameter, m. */
  readonly major: number;
  /** Pitch, m. */
  readonly pitch: number;
  readonly source: Source;
}

const READ_UN = secondHand('ASME B1.1 sizes, as listed in BelfrySCAD/BOSL2 screws.scad (table UTS_thread)');
const MEMORY_UN = fromMemory('ASME B1.1');
const READ_ISO = secondHand('ISO 262 selection, as listed in shaise/FreeCAD_FastenersWB iso262def.csv');
const MEMORY_ISO = fromMemory('ISO 261');

// One list a series and source, each designation `size-threads per inch` or `diameter x pitch`.
// prettier-ignore
const LISTS: readonly (readonly [ThreadSeries, Source, string])[] = [
  ['UNC', READ_UN, `
    #1-64 #2-56 #3-48 #4-40 #5-40 #6-32 #8-32 #10-24 #12-24
    1/4-20 5/16-18 3/8-16 7/16-14 1/2-13 9/16-12 5/8-11 3/4-10 7/8-9
    1-8 1-1/8-7 1-1/4-7 1-3/8-6 1-1/2-6 1-3/4-5 2-4.5`],
  ['UNC', MEMORY_UN, '2-1/4-4.5 2-1/2-4 2-3/4-4 3-4 3-1/4-4 3-1/2-4 3-3/4-4 4-4'],
  ['UNF', READ_UN, `
    #0-80 #1-72 #2-64 #3-56 #4-48 #5-44 #6-40 #8-36 #10-32 #12-28
    1/4-28 5/16-24 3/8-24 7/16-20 1/2-20 9/16-18 5/8-18 3/4-16 7/8-14
    1-12 1-1/8-12 1-1/4-12 1-3/8-12 1-1/2-12`],
  ['UNEF', READ_UN, `
    #12-32 1/4-32 5/16-32 3/8-32 7/16-28 1/2-28 9/16-24 5/8-24 3/4-20 7/8-20 1-20
    1-1/8-18 1-1/4-18 1-3/8-18 1-1/2-18`],
  ['UNEF', MEMORY_UN, '11/16-24 13/16-20 15/16-20 1-1/16-18 1-3/16-18 1-5/16-18 1-7/16-18 1-9/16-18 1-5/8-18 1-11/16-18'],
  ['coarse', READ_ISO, `
    1x0.25 1.2x0.25 1.4x0.3 1.6x0.35 1.8x0.35 2x0.4 2.5x0.45 3x0.5 3.5x0.6 4x0.7 5x0.8 6x1 7x1 8x1.25 10x1.5
    12x1.75 14x2 16x2 18x2.5 20x2.5 22x2.5 24x3 27x3 30x3.5 33x3.5 36x4 39x4 42x4.5 45x4.5 48x5 52x5 56x5.5
    60x5.5 64x6`],
  ['coarse', MEMORY_ISO, '1.1x0.25 2.2x0.45 4.5x0.75 9x1.25 11x1.5'],
  ['fine', READ_ISO, `
    8x1 10x1 10x1.25 12x1.25 12x1.5 14x1.5 16x1.5 18x1.5 18x2 20x1.5 20x2 22x1.5 22x2 24x2 27x2 30x2 33x2
    36x3 39x3 42x3 45x3 48x3`],
  ['fine', MEMORY_ISO, `
    1x0.2 1.2x0.2 1.6x0.2 2x0.25 2.5x0.35 3x0.35 4x0.5 5x0.5 6x0.75 7x0.75 8x0.75 9x1 10x0.75 12x1 14x1 14x1.25
    16x1 18x1 20x1 24x1.5 27x1.5 30x1.5 33x1.5 36x1.5 36x2 39x2 42x2 48x2`],
];

/** Inches of a size as written: `#10` is 0.060 + 0.013 × 10 (ASME B1.1), `1-1/4` a mixed number. */
export const unSize = (size: string): number => {
  if (size.startsWith('#')) return (60 + 13 * Number(size.slice(1))) / 1000;
  const [, whole = '0', over, under = '1'] = /^(?:(\d+)(?:[- ]|$))?(?:(\d+)\/(\d+))?$/.exec(size) ?? [];
  return Number(whole) + Number(over ?? 0) / Number(under);
};

const unThread = (series: ThreadSeries, source: Source, designation: string): Thread => {
  const cut = designation.lastIndexOf('-');
  const tpi = Number(designation.slice(cut + 1));
  const major = unSize(designation.slice(0, cut));
  return {
    name: `${designation} ${series}`,
    series,
    system: 'UN',
    printed: { major, pitch: 1 / tpi },
    tpi,
    major: major * 0.0254,
    pitch: 0.0254 / tpi,
    source,
  };
};

const isoThread = (series: ThreadSeries, source: Source, designation: string): Thread => {
  const [major = NaN, pitch = NaN] = designation.split('x').map(Number);
  return {
    name: series === 'coarse' ? `M${major}` : `M${designation}`,
    series,
    system: 'ISO',
    printed: { major, pitch },
    tpi: 25.4 / pitch,
    major: major / 1000,
    pitch: pitch / 1000,
    source,
  };
};

/** Every thread, inch before metric, coarse before fine; sizes ascend within a series. */
export const THREADS: readonly Thread[] = LISTS.flatMap(([series, source, list]) =>
  list
    .trim()
    .split(/\s+/)
    .map((designation) => (series.startsWith('UN') ? unThread : isoThread)(series, source, designation)),
).sort((a, b) => order(a) - order(b) || a.major - b.major || b.pitch - a.pitch);

function order(thread: Thread): number {
  return (['UNC', 'UNF', 'UNEF', 'coarse', 'fine'] as const).indexOf(thread.series);
}

const HEIGHT = Math.sqrt(3) / 2;
/** Threads in full, cut: twice three quarters of the sharp height, per pitch; the shop's 100 %. */
export const FULL_THREAD = 1.5 * HEIGHT;

/** Basic pitch diameter D2 = D − 2·(3/8)H, m. */
export const pitchDiameter = ({ major, pitch }: Thread): number => major - 0.75 * HEIGHT * pitch;
/** Basic minor diameter of the internal thread D1 = D − 2·(5/8)H, m. */
export const minorDiameter = ({ major, pitch }: Thread): number => major - 1.25 * HEIGHT * pitch;
/**
 * Tensile stress area, m². ISO 898-1 takes the mean of pitch diameter and rounded root (d3 = d − 17H/12), ASME B1.1
 * `D − 9√3/16 P`: not the same formula.
 */
export const stressArea = ({ system, major, pitch }: Thread): number => {
  const diameter = major - (system === 'ISO' ? (0.75 + 17 / 12) / 2 : 9 / 8) * HEIGHT * pitch;
  return (Math.PI / 4) * diameter ** 2;
};
