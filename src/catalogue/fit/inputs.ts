import { commonPractice, input, named, type Input, type NativeWriter } from '../../core/define';
import { naming, refuse } from '../../core/refusal';
import { readClass, readFit, type WrittenClass, type WrittenFit } from '../../tables/fitName';
import { deviations, ISO_286, ISO_286_RECALLED, SIZE_STEPS, type Deviations } from '../../tables/iso286';

export const size = input('size', 'D', 'length', {
  above: '0 mm',
  max: '500 mm',
  usual: ['1 mm', '500 mm'],
  says: 'Nominal size',
});

export const toleranceClass: Input<'class', WrittenClass> = named<'class', WrittenClass>(
  'class',
  'class',
  { what: 'a tolerance class such as "H7" (hole) or "g6" (shaft)', read: readClass },
  { says: 'Tolerance class: capital for a hole, small for a shaft' },
);

export const fit: Input<'fit', WrittenFit> = named<'fit', WrittenFit>(
  'fit',
  'fit',
  { what: 'a fit such as "H7/g6"', read: readFit },
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
export function nativeRefuseOtherSize(
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

/**
 * A deviation as worksheet text: read from its value in every step of sizes, worked out when the text is written. Where a
 * class is not defined the table says so, and the text that counts with it is an error.
 */
export function nativeBySize(
  title: string,
  diameter: string,
  valueAt: (size: number) => number,
  write: NativeWriter,
): string {
  const rows = SIZE_STEPS.map((upTo, i): readonly [number, number | string] => {
    const over = SIZE_STEPS[i - 1] ?? 0;
    // A step begins just above the one before.
    const from = over * MILLIMETRE * (1 + 1e-12);
    try {
      return [from, valueAt(((over + upTo) / 2) * MILLIMETRE)];
    } catch {
      return [from, 'undefined'];
    }
  });
  return write.stepped(title, ['over (m)', 'value (m)'], rows, diameter);
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
