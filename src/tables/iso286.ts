import { fromMemory, published, type Source } from '../core/define';
import { Refusal } from '../core/refusal';
import { nearestNames, UnknownName } from './names';

/**
 * ISO 286-1: limit deviations of holes and shafts up to 500 mm, in micrometres.
 * Tables and not formulas: below 3 mm the defining formulas miss the printed values by up to 80 %.
 */

export const ISO_286 = published(
  'ISO 286-1 values, as printed in Narayana, Kannaiah, Venkata Reddy, Machine Drawing (3rd ed.), Tables 15.1 to 15.4; two misprints there (u 200 to 225, x 355 to 400) settled by the defining formulas',
);
export const ISO_286_RECALLED = fromMemory(
  'ISO 286-1, compared with its defining formulas: shafts a to k up to 180 mm, holes A to N up to 120 mm, IT17 and IT18',
);

/** Upper ends of the size steps, mm: over the one before, up to and including this. */
const MAIN = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500];
// prettier-ignore
const FINE = [
  3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500,
];
/** Upper ends of the finest steps: within one every deviation stays the same. */
export const SIZE_STEPS: readonly number[] = FINE;

/** One value a main step, or one a fine step where the standard divides further; `-`: not defined. */
type Row = readonly (number | undefined)[];
const rows = <K extends string>(table: Readonly<Record<K, string>>) =>
  new Map(
    Object.entries<string>(table).map(([key, text]): [string, Row] => [
      key,
      text.split(' ').map((cell) => (cell === '-' ? undefined : Number(cell))),
    ]),
  );

// Standard tolerances.
// prettier-ignore
const IT = rows({
  '01': '0.3 0.4 0.4 0.5 0.6 0.6 0.8 1 1.2 2 2.5 3 4',
  '0': '0.5 0.6 0.6 0.8 1 1 1.2 1.5 2 3 4 5 6',
  '1': '0.8 1 1 1.2 1.5 1.5 2 2.5 3.5 4.5 6 7 8',
  '2': '1.2 1.5 1.5 2 2.5 2.5 3 4 5 7 8 9 10',
  '3': '2 2.5 2.5 3 4 4 5 6 8 10 12 13 15',
  '4': '3 4 4 5 6 7 8 10 12 14 16 18 20',
  '5': '4 5 6 8 9 11 13 15 18 20 23 25 27',
  '6': '6 8 9 11 13 16 19 22 25 29 32 36 40',
  '7': '10 12 15 18 21 25 30 35 40 46 52 57 63',
  '8': '14 18 22 27 33 39 46 54 63 72 81 89 97',
  '9': '25 30 36 43 52 62 74 87 100 115 130 140 155',
  '10': '40 48 58 70 84 100 120 140 160 185 210 230 250',
  '11': '60 75 90 110 130 160 190 220 250 290 320 360 400',
  '12': '100 120 150 180 210 250 300 350 400 460 520 570 630',
  '13': '140 180 220 270 330 390 460 540 630 720 810 890 970',
  '14': '250 300 360 430 520 620 740 870 1000 1150 1300 1400 1550',
  '15': '400 480 580 700 840 1000 1200 1400 1600 1850 2100 2300 2500',
  '16': '600 750 900 1100 1300 1600 1900 2200 2500 2900 3200 3600 4000',
  '17': '1000 1200 1500 1800 2100 2500 3000 3500 4000 4600 5200 5700 6300',
  '18': '1400 1800 2200 2700 3300 3900 4600 5400 6300 7200 8100 8900 9700',
});

// Shafts a to h: how far the upper limit lies below the nominal size.
// prettier-ignore
const BELOW = rows({
  a: '270 270 280 290 290 300 300 310 320 340 360 380 410 460 520 580 660 740 820 920 1050 1200 1350 1500 1650',
  b: '140 140 150 150 150 160 160 170 180 190 200 220 240 260 280 310 340 380 420 480 540 600 680 760 840',
  c: '60 70 80 95 95 110 110 120 130 140 150 170 180 200 210 230 240 260 280 300 330 360 400 440 480',
  cd: '34 46 56 70 85 100 - - - - - - -',
  d: '20 30 40 50 65 80 100 120 145 170 190 210 230',
  e: '14 20 25 32 40 50 60 72 85 100 110 125 135',
  ef: '10 14 18 23 28 35 - - - - - - -',
  f: '6 10 13 16 20 25 30 36 43 50 56 62 68',
  fg: '4 6 8 10 12 15 - - - - - - -',
  g: '2 4 5 6 7 9 10 12 14 15 17 18 20',
  h: '0 0 0 0 0 0 0 0 0 0 0 0 0',
});

// Shafts k to zc: how far the lower limit lies above the nominal size (k: grades 4 to 7).
// prettier-ignore
const ABOVE = rows({
  k: '0 1 1 1 2 2 2 3 3 4 4 4 5',
  m: '2 4 6 7 8 9 11 13 15 17 20 21 23',
  n: '4 8 10 12 15 17 20 23 27 31 34 37 40',
  p: '6 12 15 18 22 26 32 37 43 50 56 62 68',
  r: '10 15 19 23 23 28 28 34 34 41 43 51 54 63 65 68 77 80 84 94 98 108 114 126 132',
  s: '14 19 23 28 28 35 35 43 43 53 59 71 79 92 100 108 122 130 140 158 170 190 208 232 252',
  t: '- - - - - - 41 48 54 66 75 91 104 122 134 146 166 180 196 218 240 268 294 330 360',
  u: '18 23 28 33 33 41 48 60 70 87 102 124 144 170 190 210 236 258 284 315 350 390 435 490 540',
  v: '- - - - 39 47 55 68 81 102 120 146 172 202 228 252 284 310 340 385 425 475 530 595 660',
  x: '20 28 34 40 45 54 64 80 97 122 146 178 210 248 280 310 350 385 425 475 525 590 660 740 820',
  y: '- - - - - 63 75 94 114 144 174 214 254 300 340 380 425 470 520 580 650 730 820 920 1000',
  z: '26 35 42 50 60 73 88 112 136 172 210 258 310 365 415 465 520 575 640 710 790 900 1000 1100 1250',
  za: '32 42 52 64 77 98 118 148 180 226 274 335 400 470 535 600 670 740 820 920 1000 1150 1300 1450 1600',
  zb: '40 50 67 90 108 136 160 200 242 300 360 445 525 620 700 780 880 960 1050 1200 1300 1500 1650 1850 2100',
  zc: '60 80 97 130 150 188 218 274 325 405 480 585 690 800 900 1000 1150 1250 1350 1550 1700 1900 2100 2400 2600',
});

// Lower deviation of shafts j, upper deviation of holes J; only these grades.
// prettier-ignore
const AROUND = rows({
  j5: '-2 -2 -2 -3 -4 -5 -7 -9 -11 -13 -16 -18 -20',
  j6: '-2 -2 -2 -3 -4 -5 -7 -9 -11 -13 -16 -18 -20',
  j7: '-4 -4 -5 -6 -8 -10 -12 -15 -18 -21 -26 -28 -32',
  j8: '-6 - - - - - - - - - - - -',
  J6: '2 5 5 6 8 10 13 16 18 22 25 29 33',
  J7: '4 6 8 10 12 14 18 22 26 30 36 39 43',
  J8: '6 10 12 15 20 24 28 34 41 47 55 60 66',
});

/** Grades from finest to coarsest, as in `IT7`. */
export const GRADES: readonly string[] = ['01', ...Array.from({ length: 19 }, (_, n) => String(n))];
/** Letters of shafts in the standard's order; holes have the same in capitals. */
export const LETTERS: readonly string[] = [...BELOW.keys(), 'js', 'j', ...ABOVE.keys()];

/** Hole-basis fits to prefer, from the loosest to the tightest. */
// prettier-ignore
export const PREFERRED_FITS = [
  'H11/c11', 'H9/d9', 'H8/f7', 'H7/g6', 'H7/h6', 'H7/k6', 'H7/n6', 'H7/p6', 'H7/s6', 'H7/u6',
] as const;
export const PREFERRED_FITS_SOURCE: Source = fromMemory('preferred hole-basis fits of ISO 286-1');

/** Sizes converted from inches or metres may lie a rounding error beside a step's end. */
const AT_STEP = 1e-9;

/** The value of a row for a size in mm. */
const at = (row: Row | undefined, size: number): number | undefined =>
  row?.[(row.length === MAIN.length ? MAIN : FINE).findIndex((end) => size <= end + AT_STEP)];

function checkSize(size: number): void {
  if (!(size > 0 && size <= 500 + AT_STEP))
    throw new Refusal(`is ${size} mm; ISO 286 is tabled here above 0 and up to 500 mm (19.685 in)`, 'size');
}

/** Standard tolerance IT of a grade, as a number such as `7`, for a size in mm, µm. */
export function standardTolerance(size: number, grade: string): number {
  checkSize(size);
  const value = at(IT.get(grade), size);
  if (value === undefined) throw new UnknownName('standard tolerance grade', grade, ['IT18', 'IT17', 'IT16']);
  // ISO 286-1 has no coarse grades for the smallest sizes.
  if (size <= 1 && Number(grade) >= 14)
    throw new UnknownName('standard tolerance grade up to 1 mm', `IT${grade}`, ['IT13', 'IT12', 'IT11']);
  return value;
}

export interface Deviations {
  /** µm from the nominal size. */
  readonly upper: number;
  readonly lower: number;
}

/** Letter and grade of a class: `H7`, `g6`, `js5`, `ZA9`, `h01`. */
const CLASS = /^([A-Z]{1,2}|[a-z]{1,2})\s*(01|\d{1,2})$/;

/**
 * Limit deviations of a class such as `H7` or `g6` for a nominal size in mm. Case tells holes from shafts. A class that the
 * standard does not define for the size is refused with the nearest that it does.
 */
export function deviations(size: number, given: string): Deviations {
  checkSize(size);
  const found = defined(size, given.trim());
  if (found) return found;
  throw new UnknownName(
    `tolerance class for ${Number(size.toPrecision(6))} mm`,
    given,
    nearestClasses(size, given.trim()),
  );
}

/** The deviations, or nothing where the class is not defined. */
function defined(size: number, text: string): Deviations | undefined {
  const [, letters = '', grade = ''] = CLASS.exec(text) ?? [];
  const it = at(IT.get(grade), size);
  const letter = letters.toLowerCase();
  if (it === undefined || !LETTERS.includes(letter)) return undefined;
  const number = grade === '01' ? -1 : Number(grade);
  if (size <= 1 && (number >= 14 || letter === 'a' || letter === 'b')) return undefined;
  if (letter === 'js') return { upper: it / 2, lower: -it / 2 };
  return letters === letter ? shaft(size, letter, number, it) : hole(size, letter, number, it);
}

function shaft(size: number, letter: string, grade: number, it: number): Deviations | undefined {
  const below = at(BELOW.get(letter), size);
  if (below !== undefined) return { upper: 0 - below, lower: 0 - below - it };
  const lower =
    letter === 'j'
      ? at(AROUND.get(`j${grade}`), size)
      : letter === 'k' && (grade < 4 || grade > 7)
        ? 0
        : at(ABOVE.get(letter), size);
  return lower === undefined ? undefined : { upper: lower + it, lower };
}

function hole(size: number, letter: string, grade: number, it: number): Deviations | undefined {
  const below = at(BELOW.get(letter), size);
  if (below !== undefined) return { upper: below + it, lower: below };
  const upper = letter === 'j' ? at(AROUND.get(`J${grade}`), size) : pressUpper(size, letter, grade);
  return upper === undefined ? undefined : { upper, lower: upper - it };
}

/** Upper deviation of holes K to ZC: the shaft's mirrored, raised by delta in the finer grades. */
function pressUpper(size: number, letter: string, grade: number): number | undefined {
  const above = at(ABOVE.get(letter), size);
  if (above === undefined) return undefined;
  const small = size <= 3 + AT_STEP;
  const throughIT8 = letter === 'k' || letter === 'm' || letter === 'n';
  if (grade > (throughIT8 ? 8 : 7)) {
    if (letter === 'k') return small ? 0 : undefined;
    if (letter === 'n') return size <= 1 ? undefined : small ? -above : 0;
    return -above;
  }
  // The one exception of the standard: M6 over 250 up to 315 mm.
  if (letter === 'm' && grade === 6 && size > 250 + AT_STEP && size <= 315 + AT_STEP) return -9;
  const delta = deltaOf(size, grade, small);
  return delta === undefined ? undefined : delta - above;
}

/** Difference between a grade and the next finer one; the standard gives it for IT3 to IT8. */
function deltaOf(size: number, grade: number, small: boolean): number | undefined {
  if (grade < 3) return undefined;
  return small ? 0 : (at(IT.get(String(grade)), size) ?? NaN) - (at(IT.get(String(grade - 1)), size) ?? NaN);
}

/** Up to three defined classes: next letters in the same grade, then next grades of the letter. */
function nearestClasses(size: number, text: string): string[] {
  const [, letters = '', grade = ''] = CLASS.exec(text) ?? [];
  const isHole = letters === letters.toUpperCase();
  const written = (letter: string, number: string) => (isHole ? letter.toUpperCase() : letter) + number;
  const place = LETTERS.indexOf(letters.toLowerCase());
  const gradePlace = GRADES.indexOf(grade);
  if (place < 0) return nearestNames(text, ['H7', 'H8', 'H9', 'g6', 'h6', 'm6', 'p6', 'f7', 'e8']);
  if (gradePlace < 0)
    return nearestNames(
      text,
      GRADES.map((number) => written(letters.toLowerCase(), number)),
    );
  const around = [1, -1, 2, -2, 3, -3];
  return [
    ...around.slice(0, 4).map((step) => written(LETTERS[place + step] ?? '', grade)),
    ...around.map((step) => written(letters.toLowerCase(), GRADES[gradePlace + step] ?? '')),
  ]
    .filter((name) => defined(size, name) !== undefined)
    .slice(0, 3);
}

/**
 * Where the deviations of a class come from. The fundamental deviations that were recalled and not read: shafts a to k up to
 * 180 mm, holes A to N up to 120 mm, and the grades IT17 and IT18. Those of h and js are no table's.
 */
export function deviationSource(size: number, given: string): Source {
  const [, letters = '', grade = ''] = CLASS.exec(given.trim()) ?? [];
  const letter = letters.toLowerCase();
  const [last, upTo] = letters === letter ? ['k', 180] : ['n', 120];
  const recalled =
    LETTERS.indexOf(letter) <= LETTERS.indexOf(last) && size <= upTo && letter !== 'h' && letter !== 'js';
  return recalled || Number(grade) > 16 ? ISO_286_RECALLED : ISO_286;
}

/** Where a standard tolerance comes from. */
export const gradeSource = (grade: string): Source => (Number(grade) > 16 ? ISO_286_RECALLED : ISO_286);
