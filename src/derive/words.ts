import { NAMESPACE } from '../cells/namespace';
import { amountSI, boundsOf } from '../core/amount';
import {
  inputsOf,
  type Amount,
  type AnyInput,
  type Definition,
  type Limits,
  type Source,
} from '../core/define';
import { numberText, quantityText, withUnit } from '../core/format';
import { fromSI, KINDS, SYSTEMS, systemUnit, type Kind, type System } from '../core/quantity';
import { readQuantity } from '../core/readQuantity';
import type { Unit } from '../core/units';

/** What a person reads of a function wherever it is offered: lists, hints, argument help, pages of help. */

/** One parameter in words. */
export interface ParameterWords {
  readonly name: string;
  /** Meaning, with the units it is read in, the words it takes and its default. */
  readonly says: string;
  /** What its value must be and usually is, in both systems: `Must be above 0. Usually 0.04 to 6 in or 1 to 150 mm.` */
  readonly limits?: string;
  readonly optional: boolean;
  /** The last parameter may be given any number of times. */
  readonly repeating: boolean;
  /** The words it takes, where it takes only words. */
  readonly choices?: readonly string[];
}

/** One function in words. The id is without the namespace: `SEAT.FORCE`, typed as `=MOLD.SEAT.FORCE(`. */
export interface FunctionWords {
  readonly id: string;
  readonly family: string;
  readonly summary: string;
  readonly parameters: readonly ParameterWords[];
  /** The id of the function that this is another name of. It answers, and is listed nowhere. */
  readonly aliasOf?: string;
}

export const isListed = ({ aliasOf }: FunctionWords): boolean => aliasOf === undefined;

/** The last parameter of every function: in which units plain numbers are read and the result is given. */
export const UNITS_PARAMETER: ParameterWords = {
  name: 'units',
  says: 'Units of plain numbers and of the result: "in" (default) or "mm". May follow the last argument given, wherever that stands',
  optional: true,
  repeating: false,
  choices: SYSTEMS,
};

/** `=MOLD.SEAT.FREEDRAFT(friction, [units])`; in some countries another sign stands between arguments. */
export function signature(
  { id, parameters }: Pick<FunctionWords, 'id' | 'parameters'>,
  separator = ',',
): string {
  const list = parameters.map(({ name, optional, repeating }) => {
    const shown = repeating ? `${name}, …` : name;
    return optional ? `[${shown}]` : shown;
  });
  return `=${NAMESPACE}.${id}(${list.join(`${separator} `)})`;
}

export const familyOf = (id: string): string => id.slice(0, id.indexOf('.'));

/** A definition's function in words; those of its parameters are made when first read, and a calculation reads none. */
export function wordsOf(definition: Definition): FunctionWords {
  let parameters: readonly ParameterWords[] | undefined;
  return {
    id: definition.name,
    family: familyOf(definition.name),
    summary: definition.summary,
    get parameters() {
      return (parameters ??= [...inputsOf(definition).map(parameterWords), UNITS_PARAMETER]);
    },
  };
}

function parameterWords(input: AnyInput): ParameterWords {
  const limits = limitsText(input);
  return {
    name: input.name,
    says: parameterText(input),
    ...(limits === undefined ? {} : { limits }),
    optional: input.optional,
    repeating: false,
    ...(input.reading.as === 'choice' ? { choices: input.reading.words } : {}),
  };
}

/** `Axial force that drives the insert home (lbf or N)`. */
function parameterText(input: AnyInput): string {
  const taken = takenText(input);
  const standard = leftOutText(input);
  return [
    `${input.says}${taken === '' ? '' : ` (${taken})`}`,
    ...(input.reading.as === 'choice' ? [choicesText(input, input.reading.words)] : []),
    ...(standard === '' ? [] : [`If left out: ${standard}`]),
  ].join('. ');
}

/** `lbf or N`; one unit where both systems share it; empty for a ratio. */
export function unitsOfKind(kind: Kind): string {
  const { in: inch, mm } = KINDS[kind].system;
  return inch === mm ? inch : `${inch} or ${mm}`;
}

/** What stands in brackets behind the meaning: units, or what is named. */
function takenText({ reading }: AnyInput): string {
  switch (reading.as) {
    case 'quantity':
    case 'list':
      return unitsOfKind(reading.kind);
    case 'set':
    case 'named': {
      const { what, number } = reading;
      if (!number) return what;
      const unit = unitsOfKind(number.kind);
      return `${what}; or a number: ${number.says}${unit === '' ? '' : `, ${unit}`}`;
    }
    case 'choice':
    case 'text':
      return '';
  }
}

const quoted = (word: string): string => `"${word}"`;

const choicesText = ({ default: standard }: AnyInput, words: readonly string[]): string =>
  `One of: ${words.map((word) => quoted(word) + (word === standard ? ' (default)' : '')).join(', ')}`;

/** What counts where the argument is left out; empty where the list of its choices says so. */
export function leftOutText({ reading, default: standard, sameAs, whenLeftOut }: AnyInput): string {
  if (sameAs !== undefined) return `as ${sameAs}`;
  if (whenLeftOut !== undefined) return whenLeftOut;
  if (standard === undefined || reading.as === 'choice') return '';
  const kind = reading.as === 'named' ? reading.number?.kind : kindOf(reading);
  if (kind !== undefined && (typeof standard === 'number' || readQuantity(standard, kind).ok))
    return amountText(standard, kind);
  return quoted(String(standard));
}

const kindOf = (reading: AnyInput['reading']): Kind | undefined =>
  reading.as === 'quantity' || reading.as === 'list' ? reading.kind : undefined;

/** An amount as it was written, and in the units of the system that it was not written in: `0.002 in (0.0508 mm)`. */
export function amountText(amount: Amount, kind: Kind): string {
  if (typeof amount === 'number') return String(amount);
  const si = amountSI(amount, kind);
  if (si === 0 && systemUnit(kind, 'mm').offset === 0) return '0';
  const reading = readQuantity(amount, kind);
  const own = reading.ok ? reading.unit : undefined;
  const texts = SYSTEMS.map((system) => systemUnit(kind, system))
    .filter((unit) => !own || !isDecimal(unit, own))
    .map((unit) => roundedText(si, kind, unit, DIGITS_OF_CONVERTED));
  return texts.length === 0 ? amount : `${amount} (${[...new Set(texts)].join(' or ')})`;
}

const DIGITS_OF_CONVERTED = 4;

/** Units that differ by a power of ten: whoever reads one reads the other. */
function isDecimal(a: Unit, b: Unit): boolean {
  if (a.offset !== b.offset) return false;
  const power = Math.log10(a.factor / b.factor);
  return Math.abs(power - Math.round(power)) < 1e-9;
}

/** To so many digits, in the unit or in a decimal multiple of it where the number would be long: `29.88 Mpsi`. */
function roundedText(si: number, kind: Kind, unit: Unit, digits: number): string {
  const shown = readableUnit(si, kind, unit);
  return withUnit(numberText(Number(fromSI(si, shown).toPrecision(digits))), shown.symbol);
}

function readableUnit(si: number, kind: Kind, unit: Unit): Unit {
  const size = (one: Unit): number => Math.abs(fromSI(si, one));
  if (size(unit) < 1e5) return unit;
  return KINDS[kind].units
    .filter((one) => isDecimal(one, unit) && size(one) >= 1)
    .reduce((best, one) => (size(one) < size(best) ? one : best), unit);
}

/** What the value of an argument must be and usually is, in both systems of units; undefined where all goes. */
function limitsText({ reading }: AnyInput): string | undefined {
  const kind = kindOf(reading);
  if (kind === undefined) return undefined;
  const usual = reading.as === 'quantity' ? reading.usual : undefined;
  const parts = [
    ...mustText(reading as Limits, kind),
    ...(usual === undefined ? [] : [`Usually ${rangeText(usual, kind)}.`]),
  ];
  return parts.length === 0 ? undefined : parts.join(' ');
}

function mustText(limits: Limits, kind: Kind): string[] {
  const { low, lowIncluded, high, highIncluded } = boundsOf(limits, kind);
  const parts = [
    ...(low > -Infinity ? [`${lowIncluded ? 'at least' : 'above'} ${limitText(low, kind)}`] : []),
    ...(high < Infinity ? [`${highIncluded ? 'at most' : 'below'} ${limitText(high, kind)}`] : []),
  ];
  return parts.length === 0 ? [] : [`Must be ${parts.join(' and ')}.`];
}

function limitText(si: number, kind: Kind): string {
  if (si === 0) return systemUnit(kind, 'mm').offset === 0 ? '0' : 'absolute zero';
  return [...new Set(SYSTEMS.map((system) => quantityText(si, kind, system)))].join(' or ');
}

/** `0.04 to 5.9 in or 1 to 150 mm`. */
function rangeText(range: readonly [Amount, Amount], kind: Kind): string {
  return [...new Set(SYSTEMS.map((system) => rangeInSystem(range, kind, system)))].join(' or ');
}

/** `1 to 150 mm`: two digits tell a range that is a habit, not a limit. */
export function rangeInSystem(range: readonly [Amount, Amount], kind: Kind, system: System): string {
  const [low, high] = range.map((amount) => amountSI(amount, kind)) as [number, number];
  const unit = readableUnit(high, kind, systemUnit(kind, system));
  const number = (si: number): string => numberText(Number(fromSI(si, unit).toPrecision(2)));
  return `${number(low)} to ${withUnit(number(high), unit.symbol)}`;
}

export const SOURCE_KINDS: Readonly<Record<Source['kind'], string>> = {
  published: 'Published',
  secondhand: 'Second hand',
  derived: 'Derived',
  memory: 'From memory, unverified',
  practice: 'Common practice',
};

/** A source in one cell or line, its kind first. */
export const sourceText = ({ kind, cites }: Source): string => `${SOURCE_KINDS[kind]}: ${cites}`;
