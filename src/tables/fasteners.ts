import { commonPractice, fromMemory, published, secondHand, type Source } from '../core/define';
import { Refusal } from '../core/refusal';
import { DRILLS } from './drills';
import { deviations } from './iso286';
import { type Named, nameFinder, UnknownName } from './names';
import { type Thread, unSize } from './threads';

/** Socket heads, clearance holes and counterbores, shoulder screws, dowel pins, ejector pins, strength classes. */

export const FASTENER_SOURCES = {
  isoHead: secondHand(
    'ISO 4762, as listed in shaise/FreeCAD_FastenersWB iso4762def.csv and gumyr/cq_warehouse (knurled heads)',
  ),
  inchHead: secondHand('ASME B18.3, as listed in gumyr/cq_warehouse socket_head_cap_parameters.csv'),
  isoHole: secondHand(
    'ISO 273, as listed in gumyr/cq_warehouse clearance_hole_sizes.csv; M12, M14 and M16, rounded up to full millimetres there, as at engineeringhardware.com',
  ),
  inchHole: fromMemory('ASME B18.3 drill and counterbore sizes'),
  looseInchHole: published(
    'Machinery’s Handbook, 31st edition, p. 1741, Table 1a (ANSI/ASME B18.2.8-1999): loose class; the size #10, not legible there, from memory',
  ),
  isoFlat: secondHand(
    'ISO 10642 socket countersunk heads, as two independent pages list them (M3 to M16, M20)',
  ),
  inchFlat: secondHand('ASME B18.3 socket flat countersunk heads, as two independent pages list them'),
  isoBore: fromMemory('DIN 974-1 series 1'),
  boreDepth: commonPractice('head height and 0.4 mm (1/64 in), so that the head lies below the face'),
  isoShoulder: secondHand(
    'ISO 7379, as listed in BelfrySCAD/BOSL2 screws.scad; shoulder limits f9 of ISO 286',
  ),
  inchShoulder: secondHand(
    'ASME B18.3, as listed in BelfrySCAD/BOSL2 screws.scad; shoulder limits from memory',
  ),
  isoDowel: secondHand(
    'ISO 8734, as listed in shaise/FreeCAD_FastenersWB iso8734def.csv; limits m6 of ISO 286',
  ),
  inchDowel: secondHand(
    'ASME B18.8.2-2000 hardened ground machine dowel pins, standard series, as two independent pages list them',
  ),
  ejectorPin: fromMemory('ISO 6751; limits g6 of ISO 286'),
  iso898: secondHand(
    'ISO 898-1, by its load tables at slsbearings.com/slsbnn/tensile-strength.html, usefastener.com and optimas.com; yield from memory',
  ),
  j429: secondHand('SAE J429, as quoted from Shigley and Mischke on a page of properties'),
  a574: secondHand('ASTM A574, as listed at stsindustrial.com and boltingspecialist.com'),
} as const satisfies Readonly<Record<string, Source>>;

const inch = (value: number): number => value * 0.0254;
const millimetre = (value: number): number => value / 1000;
const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-7;

// Socket head cap screws. The head is as high as the thread is thick, in both standards.
// ISO 4762: size, largest head (knurled), hexagon, counterbore (DIN 974-1), mm.
// prettier-ignore
const ISO_HEADS: readonly (readonly [size: number, head: number, hex: number, bore: number])[] = [
  [1.6, 3.14, 1.5, 3.5], [2, 3.98, 1.5, 4.3], [2.5, 4.68, 2, 5], [3, 5.68, 2.5, 6.5], [4, 7.22, 3, 8], [5, 8.72, 4, 10],
  [6, 10.22, 5, 11], [8, 13.27, 6, 15], [10, 16.27, 8, 18], [12, 18.27, 10, 20], [14, 21.33, 12, 24], [16, 24.33, 14, 26],
  [20, 30.33, 17, 33], [24, 36.39, 19, 40], [30, 45.39, 22, 50], [36, 54.46, 27, 58],
];
// ASME B18.3: size, largest head, hexagon, counterbore, inches; drills of the close and the normal clearance hole.
// prettier-ignore
const INCH_HEADS: readonly (readonly [size: string, head: number, hex: number, bore: number, close: string, normal: string])[] = [
  ['#0', 0.096, 0.05, 1/8, '#51', '#49'], ['#1', 0.118, 1/16, 5/32, '#46', '#43'], ['#2', 0.14, 5/64, 3/16, '3/32', '#36'],
  ['#3', 0.161, 5/64, 7/32, '#36', '#31'], ['#4', 0.183, 3/32, 7/32, '1/8', '#29'], ['#5', 0.205, 3/32, 1/4, '9/64', '#23'],
  ['#6', 0.226, 7/64, 9/32, '#23', '#18'], ['#8', 0.27, 9/64, 5/16, '#15', '#10'], ['#10', 0.312, 5/32, 3/8, '#5', '#2'],
  ['1/4', 0.375, 3/16, 7/16, '17/64', '9/32'], ['5/16', 0.469, 1/4, 17/32, '21/64', '11/32'],
  ['3/8', 0.562, 5/16, 5/8, '25/64', '13/32'], ['7/16', 0.656, 3/8, 23/32, '29/64', '15/32'],
  ['1/2', 0.75, 3/8, 13/16, '33/64', '17/32'], ['5/8', 0.938, 1/2, 1, '41/64', '21/32'],
  ['3/4', 1.125, 5/8, 1 + 3/16, '49/64', '25/32'], ['7/8', 1.312, 3/4, 1 + 3/8, '57/64', '29/32'],
  ['1', 1.5, 3/4, 1 + 5/8, '1-1/64', '1-1/32'],
];
// Drills of the loose clearance hole, ASME B18.2.8.
const INCH_LOOSE: Readonly<Record<string, string>> = {
  '#0': '3/32', '#1': '#37', '#2': '#32', '#3': '#30', '#4': '#27', '#5': '11/64', '#6': '#13', '#8': '#3', '#10': 'B',
  '1/4': '19/64', '5/16': '23/64', '3/8': '27/64', '7/16': '31/64', '1/2': '39/64', '5/8': '47/64', '3/4': '29/32', '7/8': '1-1/32',
  '1': '1-5/32',
}; // prettier-ignore
// Socket countersunk heads: size, largest diameter (where the cone would end in a sharp edge), height, hexagon.
// ISO 10642, 90°, mm.
// prettier-ignore
const ISO_FLATS: readonly (readonly [size: number, head: number, height: number, hex: number])[] = [
  [3, 6.72, 1.86, 2], [4, 8.96, 2.48, 2.5], [5, 11.2, 3.1, 3], [6, 13.44, 3.72, 4], [8, 17.92, 4.96, 5], [10, 22.4, 6.2, 6],
  [12, 26.88, 7.44, 8], [16, 33.6, 8.8, 10], [20, 40.32, 10.16, 12],
];
// ASME B18.3, 82°, inches.
// prettier-ignore
const INCH_FLATS: readonly (readonly [size: string, head: number, height: number, hex: number])[] = [
  ['#0', 0.138, 0.044, 0.035], ['#1', 0.168, 0.054, 0.05], ['#2', 0.197, 0.064, 0.05], ['#3', 0.226, 0.073, 1/16],
  ['#4', 0.255, 0.083, 1/16], ['#5', 0.281, 0.09, 5/64], ['#6', 0.307, 0.097, 5/64], ['#8', 0.359, 0.112, 3/32],
  ['#10', 0.411, 0.127, 1/8], ['1/4', 0.531, 0.161, 5/32], ['5/16', 0.656, 0.198, 3/16], ['3/8', 0.781, 0.234, 7/32],
  ['7/16', 0.844, 0.234, 1/4], ['1/2', 0.938, 0.251, 5/16], ['5/8', 1.188, 0.324, 3/8], ['3/4', 1.438, 0.396, 1/2],
];
// ISO 273 clearance holes: size, close, normal, loose, mm.
// prettier-ignore
const ISO_HOLES: readonly (readonly [size: number, close: number, normal: number, loose: number])[] = [
  [1, 1.1, 1.2, 1.3], [1.2, 1.3, 1.4, 1.5], [1.4, 1.5, 1.6, 1.8], [1.6, 1.7, 1.8, 2], [1.8, 2, 2.1, 2.2], [2, 2.2, 2.4, 2.6],
  [2.5, 2.7, 2.9, 3.1], [3, 3.2, 3.4, 3.6], [3.5, 3.7, 3.9, 4.2], [4, 4.3, 4.5, 4.8], [5, 5.3, 5.5, 5.8], [6, 6.4, 6.6, 7],
  [7, 7.4, 7.6, 8], [8, 8.4, 9, 10], [10, 10.5, 11, 12], [12, 13, 13.5, 14.5], [14, 15, 15.5, 16.5], [16, 17, 17.5, 18.5], [18, 19, 20, 21],
  [20, 21, 22, 24], [22, 23, 24, 26], [24, 25, 26, 28], [27, 28, 30, 32], [30, 31, 33, 35], [33, 34, 36, 38], [36, 37, 39, 42],
  [39, 40, 42, 45], [42, 43, 45, 48], [45, 46, 48, 52], [48, 50, 52, 56], [52, 54, 56, 62], [56, 58, 62, 66], [60, 62, 66, 70],
  [64, 66, 70, 74],
];

export interface SocketHead {
  /** Largest head diameter (knurled), head height, hexagon across flats, counterbore diameter and depth, m. */
  readonly head: number;
  readonly height: number;
  readonly hex: number;
  readonly bore: number;
  readonly boreDepth: number;
  readonly source: Source;
  readonly boreSource: Source;
}

export interface FlatHead {
  /** Largest diameter, height and hexagon across flats, m; included angle, rad. */
  readonly head: number;
  readonly height: number;
  readonly hex: number;
  readonly angle: number;
  readonly source: Source;
}

const DEGREE = Math.PI / 180;

/** Socket countersunk head screw of a thread, coarse or fine. */
export function flatHead({ system, printed, name }: Thread): FlatHead {
  if (system === 'ISO') {
    const row = ISO_FLATS.find(([size]) => same(size, printed.major));
    if (!row)
      throw new UnknownName(
        'ISO 10642 countersunk screw',
        name,
        around(
          ISO_FLATS.map(([size]) => size),
          printed.major,
          metricSize,
        ),
      );
    const [, head, height, hex] = row.map(millimetre) as [number, number, number, number];
    return { head, height, hex, angle: 90 * DEGREE, source: FASTENER_SOURCES.isoFlat };
  }
  const row = INCH_FLATS.find(([size]) => same(unSize(size), printed.major));
  if (!row)
    throw new UnknownName(
      'ASME B18.3 countersunk screw',
      name,
      nearestInch(
        INCH_FLATS.map(([size]) => size),
        printed.major,
      ),
    );
  const [, head, height, hex] = row;
  return {
    head: inch(head),
    height: inch(height),
    hex: inch(hex),
    angle: 82 * DEGREE,
    source: FASTENER_SOURCES.inchFlat,
  };
}

/** Space left above a head in its counterbore: 0.4 mm, 1/64 in. */
const SUNK = { ISO: 0.4e-3, UN: inch(1 / 64) } as const;

/** Socket head cap screw of a thread, coarse or fine. */
export function socketHead(thread: Thread): SocketHead {
  const { system, printed, major, name } = thread;
  const of = (head: number, hex: number, bore: number, metres: (value: number) => number): SocketHead => ({
    head: metres(head),
    height: major,
    hex: metres(hex),
    bore: metres(bore),
    boreDepth: major + SUNK[system],
    source: FASTENER_SOURCES[system === 'ISO' ? 'isoHead' : 'inchHead'],
    boreSource: FASTENER_SOURCES[system === 'ISO' ? 'isoBore' : 'inchHole'],
  });
  if (system === 'ISO') {
    const row = ISO_HEADS.find(([size]) => same(size, printed.major));
    if (row) return of(row[1], row[2], row[3], millimetre);
    throw new UnknownName(
      'ISO 4762 socket head screw',
      name,
      around(
        ISO_HEADS.map(([size]) => size),
        printed.major,
        metricSize,
      ),
    );
  }
  const row = INCH_HEADS.find(([size]) => same(unSize(size), printed.major));
  if (row) return of(row[1], row[2], row[3], inch);
  throw new UnknownName('ASME B18.3 socket head screw', name, nearestInch(INCH_HEAD_SIZES, printed.major));
}

const metricSize = (size: number): string => `M${size}`;

/** The three sizes nearest to one, named. */
const around = (sizes: readonly number[], size: number, name: (size: number) => string): string[] =>
  [...sizes]
    .sort((a, b) => Math.abs(a - size) - Math.abs(b - size))
    .slice(0, 3)
    .map(name);

const INCH_HEAD_SIZES = INCH_HEADS.map(([name]) => name);

const nearestInch = (names: readonly string[], size: number): string[] =>
  around(
    names.map((name) => unSize(name)),
    size,
    (value) => names.find((name) => same(unSize(name), value)) ?? '',
  );

export const CLEARANCE_FITS = ['close', 'normal', 'loose'] as const;

/** Diameter of a clearance hole, m. */
export function clearanceHole(
  { system, printed, name }: Thread,
  fit: (typeof CLEARANCE_FITS)[number],
): { readonly diameter: number; readonly source: Source } {
  if (system === 'ISO') {
    const row = ISO_HOLES.find(([size]) => same(size, printed.major));
    if (!row)
      throw new UnknownName(
        'ISO 273 size',
        name,
        around(
          ISO_HOLES.map(([size]) => size),
          printed.major,
          metricSize,
        ),
      );
    const [, ...holes] = row;
    return {
      diameter: millimetre(holes[CLEARANCE_FITS.indexOf(fit)] ?? NaN),
      source: FASTENER_SOURCES.isoHole,
    };
  }
  const row = INCH_HEADS.find(([size]) => same(unSize(size), printed.major));
  if (!row) throw new UnknownName('inch clearance hole', name, nearestInch(INCH_HEAD_SIZES, printed.major));
  const [size, , , , close, normal] = row;
  const wanted = { close, normal, loose: INCH_LOOSE[size] }[fit];
  const drill = DRILLS.find((it) => it.name === wanted);
  return {
    diameter: drill?.diameter ?? NaN,
    source: FASTENER_SOURCES[fit === 'loose' ? 'looseInchHole' : 'inchHole'],
  };
}

// Shoulder screws. ISO 7379: shoulder, thread, thread length, largest head, head height, hexagon, mm.
// prettier-ignore
const ISO_SHOULDERS: readonly (readonly [shoulder: number, thread: string, length: number, head: number, height: number, hex: number])[] = [
  [6.5, 'M5', 9.5, 10, 4.5, 3], [8, 'M6', 11, 13, 5.5, 4], [10, 'M8', 13, 16, 7, 5], [13, 'M10', 16, 18, 9, 6],
  [16, 'M12', 18, 24, 11, 8], [20, 'M16', 22, 30, 14, 10], [25, 'M20', 27, 36, 16, 12],
];
// ASME B18.3, inches. Shoulders are 0.002 to 0.004 in small.
// prettier-ignore
const INCH_SHOULDERS: readonly (readonly [shoulder: number, thread: string, length: number, head: number, height: number, hex: number])[] = [
  [1/8, '#4-40', 0.1562, 1/4, 0.125, 5/64], [5/32, '#6-32', 0.1875, 9/32, 0.1406, 3/32], [3/16, '#8-32', 0.1875, 5/16, 0.1562, 3/32],
  [1/4, '#10-24', 0.375, 3/8, 0.1875, 1/8], [5/16, '1/4-20', 0.4375, 7/16, 0.2188, 5/32], [3/8, '5/16-18', 0.5, 9/16, 0.25, 3/16],
  [1/2, '3/8-16', 0.625, 3/4, 0.3125, 1/4], [5/8, '1/2-13', 0.75, 7/8, 0.375, 5/16], [3/4, '5/8-11', 0.875, 1, 0.5, 3/8],
  [1, '3/4-10', 1, 1 + 5/16, 0.625, 1/2], [1 + 1/4, '7/8-9', 1.125, 1.75, 0.75, 5/8],
];

export interface ShoulderScrew {
  readonly system: 'ISO' | 'UN';
  /** Nominal shoulder, its limits, thread length, largest head, head height, hexagon across flats, m. */
  readonly shoulder: number;
  readonly shoulderMax: number;
  readonly shoulderMin: number;
  readonly threadLength: number;
  readonly head: number;
  readonly height: number;
  readonly hex: number;
  readonly thread: string;
  readonly source: Source;
}

export const SHOULDER_SCREWS: readonly ShoulderScrew[] = [
  ...ISO_SHOULDERS.map(([size, thread, length, head, height, hex]): ShoulderScrew => {
    const { upper, lower } = deviations(size, 'f9');
    return {
      system: 'ISO',
      shoulder: millimetre(size),
      shoulderMax: (size * 1000 + upper) / 1e6,
      shoulderMin: (size * 1000 + lower) / 1e6,
      threadLength: millimetre(length),
      head: millimetre(head),
      height: millimetre(height),
      hex: millimetre(hex),
      thread,
      source: FASTENER_SOURCES.isoShoulder,
    };
  }),
  ...INCH_SHOULDERS.map(([size, thread, length, head, height, hex]): ShoulderScrew => ({
    system: 'UN',
    shoulder: inch(size),
    shoulderMax: inch(size - 0.002),
    shoulderMin: inch(size - 0.004),
    threadLength: inch(length),
    head: inch(head),
    height: inch(height),
    hex: inch(hex),
    thread,
    source: FASTENER_SOURCES.inchShoulder,
  })),
];

const sizeName = (metres: number, system: 'ISO' | 'UN'): string =>
  system === 'ISO'
    ? `${Number((metres * 1000).toFixed(3))} mm`
    : `${Number((metres / 0.0254).toFixed(4))} in`;

/** The shoulder screw of a nominal shoulder diameter, m; refused with the nearest that there are. */
export function shoulderScrew(diameter: number): ShoulderScrew {
  const nearest = [...SHOULDER_SCREWS].sort(
    (a, b) => Math.abs(a.shoulder - diameter) - Math.abs(b.shoulder - diameter),
  );
  const [first] = nearest;
  if (first && same(first.shoulder, diameter)) return first;
  throw new UnknownName(
    'shoulder screw',
    `${sizeName(diameter, 'ISO')} (${sizeName(diameter, 'UN')})`,
    nearest.slice(0, 3).map(({ shoulder, system }) => sizeName(shoulder, system)),
  );
}

// ISO 8734: diameter, shortest and longest, mm.
// prettier-ignore
const ISO_DOWELS: readonly (readonly [size: number, shortest: number, longest: number])[] = [
  [1, 3, 10], [1.5, 4, 16], [2, 5, 20], [2.5, 6, 24], [3, 8, 30], [4, 10, 40], [5, 12, 50], [6, 14, 60], [8, 18, 80],
  [10, 22, 100], [12, 26, 100], [16, 40, 100], [20, 50, 100],
];
// prettier-ignore
const INCH_DOWELS = [1/16, 5/64, 3/32, 1/8, 5/32, 3/16, 1/4, 5/16, 3/8, 7/16, 1/2, 5/8, 3/4, 7/8, 1];

export interface GroundPin {
  /** Nominal diameter and its limits, m. */
  readonly diameter: number;
  readonly max: number;
  readonly min: number;
  readonly source: Source;
}

export interface Dowel extends GroundPin {
  /** m; absent where the table has none. */
  readonly lengths?: readonly [shortest: number, longest: number];
}
/** Hardened dowel pins, metric m6, inch 0.0002 in over nominal ± 0.0001 in. */
export const DOWELS: readonly Dowel[] = [
  ...ISO_DOWELS.map(([size, shortest, longest]) => ({
    ...metricPin(size, 'm6', FASTENER_SOURCES.isoDowel),
    lengths: [millimetre(shortest), millimetre(longest)] as const,
  })),
  ...INCH_DOWELS.map((size) => ({
    diameter: inch(size),
    max: inch(size + 0.0003),
    min: inch(size + 0.0001),
    source: FASTENER_SOURCES.inchDowel,
  })),
];

function metricPin(size: number, of: string, source: Source): GroundPin {
  const { upper, lower } = deviations(size, of);
  return {
    diameter: millimetre(size),
    max: (size * 1000 + upper) / 1e6,
    min: (size * 1000 + lower) / 1e6,
    source,
  };
}

/** The ground pin of a nominal diameter, m; refused with the nearest that there are. */
function pinOf<T extends GroundPin>(what: string, pins: readonly T[], diameter: number): T {
  const nearest = [...pins].sort((a, b) => Math.abs(a.diameter - diameter) - Math.abs(b.diameter - diameter));
  const [first] = nearest;
  if (first && same(first.diameter, diameter)) return first;
  throw new UnknownName(
    what,
    `${sizeName(diameter, 'ISO')} (${sizeName(diameter, 'UN')})`,
    nearest.slice(0, 3).map((pin) => sizeName(pin.diameter, isInch(pin) ? 'UN' : 'ISO')),
  );
}

const isInch = ({ diameter }: GroundPin): boolean => INCH_DOWELS.some((size) => same(inch(size), diameter));

export const dowel = (diameter: number): Dowel => pinOf('dowel pin', DOWELS, diameter);
export const ejectorPin = (diameter: number): EjectorPin => pinOf('ejector pin', EJECTOR_PINS, diameter);

// ISO 6751 ejector pins: diameter, head diameter, head height, mm.
// prettier-ignore
const EJECTOR: readonly (readonly [size: number, head: number, height: number])[] = [
  [1, 2.5, 1.2], [1.5, 3, 1.5], [2, 4, 2], [2.5, 5, 2], [3, 6, 3], [3.5, 7, 3], [4, 8, 3], [4.5, 8, 3], [5, 10, 3], [5.5, 10, 3],
  [6, 12, 5], [7, 12, 5], [8, 14, 5], [9, 14, 5], [10, 16, 5], [12, 18, 7], [14, 22, 7], [16, 22, 7], [20, 26, 8], [25, 32, 10],
];

export interface EjectorPin extends GroundPin {
  /** Diameter and height of the head, m. */
  readonly head: number;
  readonly height: number;
}
/** Ejector pins, g6. */
export const EJECTOR_PINS: readonly EjectorPin[] = EJECTOR.map(([size, head, height]) => ({
  ...metricPin(size, 'g6', FASTENER_SOURCES.ejectorPin),
  head: millimetre(head),
  height: millimetre(height),
}));

export interface Strength {
  /** Proof stress, yield and tensile strength, Pa. */
  readonly proof: number;
  readonly yield: number;
  readonly tensile: number;
}

export interface StrengthClass extends Named {
  readonly source: Source;
  /** MPa or ksi by largest size in mm or inches. */
  readonly metric: boolean;
  readonly bands: readonly (readonly [upTo: number, proof: number, yieldStress: number, tensile: number])[];
}

// prettier-ignore
export const STRENGTH_CLASSES: readonly StrengthClass[] = [
  { name: '4.8', aliases: ['class 4.8', 'grade 4.8'], metric: true, source: FASTENER_SOURCES.iso898, bands: [[16, 310, 340, 420]] },
  { name: '8.8', aliases: ['class 8.8', 'grade 8.8'], metric: true, source: FASTENER_SOURCES.iso898, bands: [[16, 580, 640, 800], [39, 600, 660, 830]] },
  { name: '10.9', aliases: ['class 10.9', 'grade 10.9'], metric: true, source: FASTENER_SOURCES.iso898, bands: [[39, 830, 940, 1040]] },
  { name: '12.9', aliases: ['class 12.9', 'grade 12.9'], metric: true, source: FASTENER_SOURCES.iso898, bands: [[39, 970, 1100, 1220]] },
  { name: 'grade 2', aliases: ['gr 2', 'J429 grade 2', 'SAE 2', 'SAE grade 2'], metric: false, source: FASTENER_SOURCES.j429, bands: [[0.75, 55, 57, 74]] },
  { name: 'grade 5', aliases: ['gr 5', 'J429 grade 5', 'SAE 5', 'SAE grade 5'], metric: false, source: FASTENER_SOURCES.j429, bands: [[1, 85, 92, 120], [1.5, 74, 81, 105]] },
  { name: 'grade 8', aliases: ['gr 8', 'J429 grade 8', 'SAE 8', 'SAE grade 8'], metric: false, source: FASTENER_SOURCES.j429, bands: [[1.5, 120, 130, 150]] },
  { name: 'A574', aliases: ['ASTM A574', 'socket head', 'alloy socket head'], metric: false, source: FASTENER_SOURCES.a574, bands: [[0.5, 140, 153, 180], [4, 135, 153, 170]] },
];

/** The strength class of a name: `8.8`, `class 12.9`, `grade 5`, `A574`. */
export const findStrengthClass = nameFinder('strength class', STRENGTH_CLASSES);

const KSI = 4448.2216152605 / 0.0254 ** 2;

/** Strengths of a class for a nominal diameter, m; refused above the largest that its standard covers. */
export function strengthOf({ name, metric, bands }: StrengthClass, diameter: number): Strength {
  const size = metric ? diameter * 1000 : diameter / 0.0254;
  const unit = metric ? 1e6 : KSI;
  const band = bands.find(([upTo]) => size <= upTo + 1e-9);
  if (!band) {
    const largest = bands[bands.length - 1]?.[0] ?? 0;
    throw new Refusal(`is ${name}, which goes up to ${largest} ${metric ? 'mm' : 'in'}`, 'strengthClass');
  }
  const [, proof, yieldStress, tensile] = band;
  return { proof: proof * unit, yield: yieldStress * unit, tensile: tensile * unit };
}
