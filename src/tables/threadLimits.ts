import { fromMemory, type Source, secondHand } from '../core/define';
import { Refusal } from '../core/refusal';
import { type Thread } from './threads';

/** Limits of size of threads: ASME B1.1 classes 2A and 2B, ISO 965-1 classes 6g and 6H. */

export type ThreadClass = '2A' | '2B' | '6g' | '6H';
export const THREAD_CLASSES = ['2A', '2B', '6g', '6H'] as const;
export type LimitedDiameter = 'major' | 'pitch' | 'minor';

export interface Limits {
  /** m; absent where the class sets no such limit. */
  readonly min?: number;
  readonly max?: number;
  /** Whether the standard's rounded table answered, or its formula. */
  readonly by: 'table' | 'formula';
  readonly source: Source;
}

/** ASME B1.1 for inch threads. */
export const B1_1 = secondHand(
  'ASME B1.1 formulas (as in BelfrySCAD/BOSL2 screws.scad), each term rounded to 0.0001 in as the standard rounds it; class 2B minor diameters to 0.001 in from #6',
);
/** ISO 965-1 for metric threads. */
export const ISO_965 = fromMemory(
  'ISO 965-1 tables; compared with printed ones: 6g from M1.6 to M6, pitch diameters of 6H to M18, ASME B1.13M-2005 rows of M8, M12, M20 and M24',
);

const HEIGHT = Math.sqrt(3) / 2;

/** Limits of one diameter of a thread, in a class of its system. Throws a `Refusal` for what the class leaves open. */
export function threadLimits(thread: Thread, of: ThreadClass, diameter: LimitedDiameter): Limits {
  const system = of.startsWith('2') ? 'UN' : 'ISO';
  if (system !== thread.system) {
    const own =
      thread.system === 'UN' ? 'an inch thread: it takes 2A or 2B' : 'a metric thread: it takes 6g or 6H';
    throw new Refusal(`is ${of}, but ${thread.name} is ${own}`, 'class');
  }
  const external = of === '2A' || of === '6g';
  if (external && diameter === 'minor')
    throw new Refusal(
      `class ${of} sets no limits to the minor diameter of a screw: the tool makes it`,
      'property',
    );
  return system === 'UN' ? unLimits(thread, external, diameter) : isoLimits(thread, external, diameter);
}

const inch = (value: number) => value * 0.0254;
/** Rounds as the standard's tables do, a tie downwards: the pitch tolerance 0.00675 of 1-8 is printed 0.0067. */
const roundTo = (places: number) => (value: number) =>
  Math.round(value * 10 ** places * (1 - 1e-12)) / 10 ** places;
const ten = roundTo(4);

/** ASME B1.1 length of engagement of the tolerance formula: the diameter for UNC and UNF, nine pitches for UNEF. */
function unLimits(
  { printed: { major: D, pitch: P }, series }: Thread,
  external: boolean,
  diameter: LimitedDiameter,
): Limits {
  const engagement = series === 'UNEF' ? 9 * P : D;
  // Rounded to six decimals first, as the standard does: it shows in the nut of 1/4-20.
  const pitchTolerance = roundTo(6)(
    0.0015 * Math.cbrt(D) + 0.0015 * Math.sqrt(engagement) + 0.015 * Math.cbrt(P) ** 2,
  );
  const by = { by: 'formula', source: B1_1 } as const;
  if (external) {
    const allowance = 0.3 * pitchTolerance;
    const [basic, tolerance] =
      diameter === 'major' ? [D, majorTolerance(P)] : [D - 0.75 * HEIGHT * P, pitchTolerance];
    const max = ten(ten(basic) - ten(allowance));
    return { min: inch(ten(max - ten(tolerance))), max: inch(max), ...by };
  }
  if (diameter === 'major') return { min: inch(D), ...by };
  if (diameter === 'pitch') {
    const min = ten(D - 0.75 * HEIGHT * P);
    return { min: inch(min), max: inch(ten(min + ten(1.3 * pitchTolerance))), ...by };
  }
  const min = D - 1.25 * HEIGHT * P;
  const tolerance = minorTolerance(D, P);
  // Below #6 the tolerance is rounded before it is added, from #6 the sum is, to three decimals.
  const [low, high] =
    D < 0.137 ? [ten(min), ten(ten(min) + ten(tolerance))] : [roundTo(3)(min), roundTo(3)(min + tolerance)];
  return { min: inch(low), max: inch(high), ...by };
}

/** Class 2A major diameter tolerance, in. Its one tie, 0.00375 of 64 threads an inch, is printed 0.0038. */
const majorTolerance = (P: number): number => 0.06 * Math.cbrt(P) ** 2 * (1 + 1e-9);

/** Class 2B minor diameter tolerance, in. */
function minorTolerance(D: number, P: number): number {
  const floor = 0.25 * P - 0.4 * P ** 2;
  if (D >= 0.25) return floor;
  return Math.min(Math.max(0.05 * Math.cbrt(P) ** 2 + (0.03 * P) / D - 0.002, floor), 0.394 * P);
}

// ISO 965-1 by pitch (mm), in µm: deviation g of screws, tolerance 6 of their major diameter, tolerance 6 of the minor
// diameter of nuts (no grade 6 for the finest pitches).
// prettier-ignore
const BY_PITCH: Readonly<Record<string, readonly [es: number, Td: number, TD1?: number]>> = {
  0.2: [17, 56], 0.25: [18, 67], 0.3: [18, 75, 85], 0.35: [19, 85, 100], 0.4: [19, 95, 112], 0.45: [20, 100, 125],
  0.5: [20, 106, 140], 0.6: [21, 125, 160], 0.7: [22, 140, 180], 0.75: [22, 140, 190], 0.8: [24, 150, 200],
  1: [26, 180, 236], 1.25: [28, 212, 265], 1.5: [32, 236, 300], 1.75: [34, 265, 335], 2: [38, 280, 375],
  2.5: [42, 335, 450], 3: [48, 375, 500], 3.5: [53, 425, 560], 4: [60, 475, 600], 4.5: [63, 500, 670],
  5: [71, 530, 710], 5.5: [75, 560, 750], 6: [80, 600, 800],
};

// ISO 965-1 tolerance 6 of the pitch diameter of screws, µm, by diameter step (over … up to, mm) and pitch.
// prettier-ignore
const PITCH_DIAMETER: readonly (readonly [over: number, upTo: number, Readonly<Record<string, number>>])[] = [
  [0.99, 1.4, { 0.2: 48, 0.25: 53, 0.3: 56 }],
  [1.4, 2.8, { 0.2: 50, 0.25: 56, 0.35: 63, 0.4: 67, 0.45: 71 }],
  [2.8, 5.6, { 0.35: 67, 0.5: 75, 0.6: 85, 0.7: 90, 0.75: 90, 0.8: 95 }],
  [5.6, 11.2, { 0.75: 100, 1: 112, 1.25: 118, 1.5: 132 }],
  [11.2, 22.4, { 1: 118, 1.25: 132, 1.5: 140, 1.75: 150, 2: 160, 2.5: 170 }],
  [22.4, 45, { 1: 125, 1.5: 150, 2: 170, 3: 200, 3.5: 212, 4: 224, 4.5: 236 }],
  [45, 90, { 1.5: 160, 2: 180, 3: 212, 4: 236, 5: 250, 5.5: 265, 6: 280 }],
];
// The nut's tolerance is 1.32 times the screw's, which is five steps of the R 40 series of preferred numbers (ISO 3).
// prettier-ignore
const R40 = [
  48, 50, 53, 56, 60, 63, 67, 71, 75, 80, 85, 90, 95, 100, 106, 112, 118, 125, 132, 140, 150, 160, 170, 180, 190, 200,
  212, 224, 236, 250, 265, 280, 300, 315, 335, 355, 375,
];
const fiveStepsUp = (value: number): number => R40[R40.indexOf(value) + 5] ?? NaN;

const PROFILE = { major: 0, pitch: 0.75, minor: 1.25 } as const satisfies Readonly<
  Record<LimitedDiameter, number>
>;

function isoLimits(
  { printed: { major: d, pitch: P }, name }: Thread,
  external: boolean,
  diameter: LimitedDiameter,
): Limits {
  const row = BY_PITCH[P];
  const Td2 = PITCH_DIAMETER.find(([over, upTo]) => d > over && d <= upTo)?.[2][P];
  if (!row || Td2 === undefined)
    throw new Refusal(`is ${name}, which is not in the tables of ISO 965-1`, 'thread');
  const [es, Td, TD1] = row;
  // The standard prints limits in 0.001 mm.
  const basic = Math.round(1000 * (d - PROFILE[diameter] * HEIGHT * P));
  const by = { by: 'table', source: ISO_965 } as const;
  if (external) {
    const max = basic - es;
    return { min: (max - (diameter === 'major' ? Td : Td2)) / 1e6, max: max / 1e6, ...by };
  }
  if (diameter === 'major') return { min: basic / 1e6, ...by };
  if (TD1 === undefined)
    throw new Refusal(`is 6H, but ISO 965-1 has no grade 6 for the fine pitch of ${name}`, 'class');
  return { min: basic / 1e6, max: (basic + (diameter === 'minor' ? TD1 : fiveStepsUp(Td2))) / 1e6, ...by };
}
