import {
  commonPractice,
  input,
  named,
  type Input,
  type NativeInput,
  type NativeWriter,
} from '../../core/define';
import { naming, refuse } from '../../core/refusal';
import { readClass, readFit, type WrittenClass, type WrittenFit } from '../../tables/fitName';
import {
  deviations,
  GRADES,
  ISO_286,
  ISO_286_RECALLED,
  PREFERRED_FITS,
  SIZE_STEPS,
  type Deviations,
} from '../../tables/iso286';

export const size = input('size', 'D', 'length', {
  above: '0 mm',
  max: '500 mm',
  usual: ['1 mm', '500 mm'],
  says: 'Nominal size',
});

export const toleranceClass: Input<'class', WrittenClass> = named<'class', WrittenClass>(
  'class',
  'class',
  { what: 'a tolerance class such as "H7" (hole) or "g6" (shaft)', read: readClass, names: () => CLASSES },
  { says: 'Tolerance class: capital for a hole, small for a shaft' },
);

export const fit: Input<'fit', WrittenFit> = named<'fit', WrittenFit>(
  'fit',
  'fit',
  { what: 'a fit such as "H7/g6"', read: readFit, names: () => PREFERRED_FITS },
  { says: 'Fit: hole class / shaft class' },
);

const MILLIMETRE = 1e-3;
const MICROMETRE = 1e-6;
export const inMillimetres = (si: number): number => si / MILLIMETRE;
export const fromMicrometres = (value: number): number => value * MICROMETRE;

/** Sizes converted from inches may lie a rounding error apart. */
const SAME_SIZE = 1e-9;
const sizeSays = (size: number): string => `is for ${sizeWords(size)}, which is not {size}`;

/** A size that stands before a class, as in `25 H7`, is the size that the call is about. */
export function refuseOtherSize(
  argument: string,
  diameter: number,
  written: { readonly size?: number },
): void {
  if (written.size !== undefined && Math.abs(written.size - diameter) > SAME_SIZE)
    refuse(argument, sizeSays(written.size));
}

/** The same in a native form. */
function nativeRefuseOtherSize(
  diameter: string,
  written: { readonly size?: number },
  write: NativeWriter,
): void {
  if (written.size !== undefined)
    write.refuse(`ABS(${diameter}-${written.size})>${SAME_SIZE}`, `size is not ${sizeWords(written.size)}`);
}

const sizeWords = (size: number): string =>
  `${Number(inMillimetres(size).toPrecision(9))} mm (${Number((size / 0.0254).toPrecision(6))} in)`;

/** Deviations of a class at a size (m), in metres; an undefined class is refused under the argument's name. */
export function deviationsAt(argument: string, diameter: number, className: string): Deviations {
  const { upper, lower } = naming(argument, () => deviations(inMillimetres(diameter), className));
  return { upper: fromMicrometres(upper), lower: fromMicrometres(lower) };
}

/** Least and largest clearance of a fit; negative is interference. */
export function gapsAt(argument: string, diameter: number, fit: WrittenFit): { min: number; max: number } {
  const hole = deviationsAt(argument, diameter, fit.hole);
  const shaft = deviationsAt(argument, diameter, fit.shaft);
  return { min: hole.lower - shaft.upper, max: hole.upper - shaft.lower };
}

// A step begins just above the one before.
const stepsFrom = SIZE_STEPS.map((_, i) => (SIZE_STEPS[i - 1] ?? 0) * MILLIMETRE * (1 + 1e-12));
const middles = SIZE_STEPS.map((upTo, i) => (((SIZE_STEPS[i - 1] ?? 0) + upTo) / 2) * MILLIMETRE);

/** Text, so that what counts with it is an error. */
const UNDEFINED = 'undefined';

/** A value for each step of sizes, worked out when the text is written. */
const byStep = (valueAt: (size: number) => number): (number | string)[] =>
  middles.map((size) => {
    try {
      return valueAt(size);
    } catch {
      return UNDEFINED;
    }
  });

/** A deviation of one class as worksheet text: read from its value in every step of sizes. */
function nativeBySize(
  title: string,
  diameter: string,
  valueAt: (size: number) => number,
  write: NativeWriter,
): string {
  const rows = byStep(valueAt).map((value, i) => [stepsFrom[i] ?? 0, value] as const);
  return write.stepped(title, ['over (m)', 'value (m)'], rows, diameter);
}

/**
 * Values by name and step of sizes in one table. Names are compared letter by letter: a look-up passes over capitals, which
 * tell holes from shafts.
 */
function nativeByName(
  title: string,
  heads: readonly string[],
  rows: readonly (readonly [name: string, values: readonly (readonly (number | string)[])[]])[],
  diameter: string,
  write: NativeWriter,
): (name: string) => string[] {
  const column = write.columns(
    title,
    ['name', 'over (m)', 'line', ...heads],
    rows.flatMap(([name, values], at) =>
      stepsFrom.map((from, i) => [
        name,
        from,
        at * stepsFrom.length + i + 1,
        ...values.map((value) => value[i] ?? UNDEFINED),
      ]),
    ),
  );
  return (name) => {
    const found = `EXACT(${column(0)},${name})*(${column(1)}<=${diameter})*${column(2)}`;
    const line = write.step('line', `SUMPRODUCT(MAX(${found}))`);
    write.refuse(`${line}<1`, 'it is not in the table of this copy');
    return heads.map((_, i) => `INDEX(${column(i + 3)},${line})`);
  };
}

/**
 * The classes of general use: what the table of a copy holds. A choice from memory of what shops and catalogues use; any
 * other class is as good, but stands in a copy for itself alone.
 */
const classesOf = (letters: Readonly<Record<string, readonly number[]>>): string[] =>
  Object.entries(letters).flatMap(([letter, grades]) => grades.map((grade) => `${letter}${grade}`));
// prettier-ignore
const HOLES = classesOf({
  A: [11], B: [11], C: [11], D: [9, 10, 11], E: [8, 9], F: [7, 8, 9], G: [6, 7, 8], H: [5, 6, 7, 8, 9, 10, 11, 12, 13],
  JS: [6, 7, 8, 9], J: [6, 7, 8], K: [6, 7, 8], M: [6, 7, 8], N: [6, 7, 8, 9], P: [6, 7, 8, 9], R: [6, 7], S: [6, 7], T: [6, 7],
  U: [7], X: [7],
});
// prettier-ignore
const SHAFTS = classesOf({
  a: [11], b: [11], c: [11], d: [8, 9, 10, 11], e: [7, 8, 9], f: [6, 7, 8, 9], g: [5, 6, 7], h: [5, 6, 7, 8, 9, 10, 11],
  js: [5, 6, 7, 8, 9], j: [5, 6, 7], k: [5, 6, 7], m: [5, 6, 7], n: [5, 6, 7], p: [5, 6, 7], r: [5, 6, 7], s: [5, 6, 7], t: [6],
  u: [6, 7], x: [6, 7],
});
const CLASSES = [...HOLES, ...SHAFTS];

let classRows:
  readonly (readonly [name: string, values: readonly (readonly (number | string)[])[]])[] | undefined;

/** Both deviations as worksheet texts, of classes that are texts. */
function deviationTexts(diameter: string, write: NativeWriter): (name: string) => NativeDeviations {
  const rows = (classRows ??= CLASSES.map((own) => {
    const of = (part: keyof Deviations): (number | string)[] =>
      byStep((size) => deviationsAt('class', size, own)[part]);
    return [own, [of('lower'), of('upper')]] as const;
  }));
  const title = 'Deviations of tolerance classes';
  const found = nativeByName(title, ['lower (m)', 'upper (m)'], rows, diameter, write);
  return (name) => {
    const [lower = '', upper = ''] = found(name);
    return { lower, upper };
  };
}

interface NativeDeviations {
  readonly lower: string;
  readonly upper: string;
}

/** Both deviations as worksheet texts; of a class that is not of general use they hold for this one alone. */
export function nativeDeviations(
  diameter: string,
  of: NativeInput<WrittenClass>,
  write: NativeWriter,
): NativeDeviations {
  const name = of.written(({ name: now, size: own }) => own === undefined && CLASSES.includes(now));
  if (name !== undefined) return deviationTexts(diameter, write)(name);
  const { name: found, ...written } = of.fixed();
  nativeRefuseOtherSize(diameter, written, write);
  const text = (which: keyof Deviations): string =>
    nativeBySize(
      `${which === 'lower' ? 'Lower' : 'Upper'} deviation of ${found}`,
      diameter,
      (at) => deviationsAt('class', at, found)[which],
      write,
    );
  return { lower: text('lower'), upper: text('upper') };
}

/** A clearance as worksheet text; of classes that are not of general use it holds for this fit alone. */
export function nativeGap(
  which: 'min' | 'max',
  diameter: string,
  of: NativeInput<WrittenFit>,
  write: NativeWriter,
): string {
  const name = of.written(
    ({ hole, shaft, size: own }) => own === undefined && HOLES.includes(hole) && SHAFTS.includes(shaft),
  );
  if (name === undefined) {
    const found = of.fixed();
    nativeRefuseOtherSize(diameter, found, write);
    const title = `Gap of ${found.hole}/${found.shaft}, ${which}`;
    return nativeBySize(title, diameter, (at) => gapsAt('fit', at, found)[which], write);
  }
  const hole = write.step('hole', `LEFT(${name},FIND("/",${name})-1)`);
  const shaft = write.step('shaft', `MID(${name},FIND("/",${name})+1,9)`);
  const isFit = `AND(EXACT(${hole},UPPER(${hole})),EXACT(${shaft},LOWER(${shaft})))`;
  write.refuse(`NOT(${isFit})`, 'fit: the hole before the shaft, such as "H7/g6"');
  const found = deviationTexts(diameter, write);
  return which === 'min'
    ? `${found(hole).lower}-${found(shaft).upper}`
    : `${found(hole).upper}-${found(shaft).lower}`;
}

/** The standard tolerance of a grade as worksheet text. */
export function nativeTolerance(
  diameter: string,
  grade: NativeInput<string>,
  valueOf: (grade: string) => (size: number) => number,
  write: NativeWriter,
): string {
  const name = grade.written(() => true);
  if (name === undefined) {
    const found = grade.fixed();
    return nativeBySize(`Standard tolerance IT${found}`, diameter, valueOf(found), write);
  }
  const rows = GRADES.map((own) => [`IT${own}`, [byStep(valueOf(own))]] as const);
  const [text = ''] = nativeByName('Standard tolerances', ['value (m)'], rows, diameter, write)(name);
  return text;
}

export const AT_20 = commonPractice('Limits hold at 20 °C (ISO 1); a warm mold is another size: HEAT.GROWTH');

const deviationSteps = {
  ES: {
    gives: 'length',
    says: 'Upper limit deviation',
    equation: 'fundamental deviation of the letter, with the grade',
  },
  EI: { gives: 'length', says: 'Lower limit deviation', equation: 'ES − standard tolerance' },
} as const;

/** FIT.UPPER, FIT.LOWER and FIT.LIMITS give different parts of the same two deviations. */
export const deviation = {
  inputs: [size, toleranceClass],
  method:
    'Table of fundamental deviations by letter and size step, plus or less the standard tolerance of the grade; holes of K to ZC with the delta rule.',
  steps: deviationSteps,
  sources: [ISO_286, ISO_286_RECALLED, AT_20],
} as const;

/** The two deviations of a call, kept for its shown work. */
export function shownDeviations(
  x: { readonly size: number; readonly class: WrittenClass },
  show: (step: keyof typeof deviationSteps, value: number) => void,
): Deviations {
  refuseOtherSize('class', x.size, x.class);
  const found = deviationsAt('class', x.size, x.class.name);
  show('ES', found.upper);
  show('EI', found.lower);
  return found;
}
