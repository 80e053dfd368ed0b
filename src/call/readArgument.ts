import { amountSI, boundsOf, inBounds, type Bounds } from '../core/amount';
import type { Amount, AnyInput, Entry, Limits, Reading } from '../core/define';
import { quantityText, withUnit } from '../core/format';
import { foldName } from '../core/names';
import { KINDS, systemUnit, toSI, type Kind, type System } from '../core/quantity';
import { kindsWithUnit, percentFrom, readQuantity } from '../core/readQuantity';
import { Refusal } from '../core/refusal';
import { CellError, type CellValue } from '../cells/value';
import { dateRefusal, isLikelyDate, mayBeDate } from './dates';
import { systemNamed } from './places';

/** An error in an argument's cell: it passes through to the result as a worksheet's own functions let it. */
export class PassedError extends Error {
  constructor(readonly cell: CellError) {
    super(cell.message);
  }
}

/** Reads one cell in a system of units. A refusal's message continues a sentence that begins with the argument's name. */
export type CellReader = (cell: CellValue, system: System) => unknown;

const orList = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;

/** What a kind of quantity is read in, for messages: `lbf, N, kN`. */
const unitsText = (kind: Kind): string =>
  KINDS[kind].units
    .map(({ symbol }) => symbol)
    .filter((s) => s !== '')
    .slice(0, 5)
    .join(', ');

function boundsText({ low, lowIncluded, high, highIncluded }: Bounds, kind: Kind, system: System): string {
  const parts = [
    ...(low > -Infinity ? [`${lowIncluded ? 'at least' : 'above'} ${quantityText(low, kind, system)}`] : []),
    ...(high < Infinity ? [`${highIncluded ? 'at most' : 'below'} ${quantityText(high, kind, system)}`] : []),
  ];
  return parts.join(' and ');
}

/** Reads an amount of a kind within limits, in SI. */
export function quantityReader(kind: Kind, limits: Limits): CellReader {
  const bounds = boundsOf(limits, kind);
  const inch = systemUnit(kind, 'in');
  const metric = systemUnit(kind, 'mm');
  return (cell, system) => {
    const unit = system === 'mm' ? metric : inch;
    const si = typeof cell === 'number' ? toSI(cell, unit) : readNumber(cell, kind, system);
    if (!Number.isFinite(si)) throw new Refusal(`is not a finite number`);
    if (!inBounds(si, bounds)) {
      throw new Refusal(
        `is ${quantityText(si, kind, system)}; it must be ${boundsText(bounds, kind, system)}`,
      );
    }
    if (kind === 'count' && !Number.isInteger(si)) throw new Refusal(`is ${si}; it must be a whole number`);
    return si;
  };
}

function readNumber(cell: Exclude<CellValue, number>, kind: Kind, system: System): number {
  if (cell === null) throw new Refusal(`is blank; ${wanted(kind, system)}`);
  if (typeof cell === 'boolean')
    throw new Refusal(`is ${String(cell).toUpperCase()}; ${wanted(kind, system)}`);
  if (cell instanceof CellError) throw new PassedError(cell);
  const reading = readQuantity(cell, kind);
  if (reading.ok) return reading.unit ? reading.si : toSI(reading.plain, systemUnit(kind, system));
  switch (reading.problem) {
    case 'comma':
      throw new Refusal(commaText(cell));
    case 'not a number':
      throw new Refusal(`is "${cell}"; ${wanted(kind, system)}`);
    case 'unknown unit':
      if (/^\d/.test(reading.unitText))
        throw new Refusal(`is "${cell}", which has a blank in its number: thousands take no sign (1000)`);
      throw new Refusal(
        `is "${cell}", but ${reading.unitText} is no unit of ${KINDS[kind].says}; use ${unitsText(kind)}`,
      );
    case 'other kind': {
      const [other] = kindsWithUnit(reading.unitText);
      throw new Refusal(
        `is "${cell}", ${other ? articled(KINDS[other].says) : 'a quantity of another kind'}; ${wanted(kind, system)}`,
      );
    }
  }
}

const commaText = (text: string): string =>
  `is "${text}", which has a comma: decimals take a point (0.5), thousands no sign (1000)`;

const articled = (words: string): string => `${/^[aeiou]/.test(words) ? 'an' : 'a'} ${words}`;

const wanted = (kind: Kind, system: System): string => {
  const { says } = KINDS[kind];
  const unit = systemUnit(kind, system).symbol;
  const example = unit === '' ? '' : `, as a number in ${unit} or as text such as "${withUnit('1.5', unit)}"`;
  return `it takes ${articled(says)}${example}`;
};

/** A percentage whose plain number a cell may hold in percent or as a fraction. */
function percentReader(limits: Limits): CellReader {
  const inLimits = quantityReader('percent', limits);
  return (cell, system) => {
    const plain = typeof cell === 'string' ? plainNumber(cell, 'percent') : cell;
    if (typeof plain !== 'number') return inLimits(cell, system);
    const si = percentFrom(plain);
    if (si !== undefined) return inLimits(si * 100, system);
    const asFraction = Number((plain * 100).toPrecision(12));
    throw new Refusal(
      `is ${plain}, which is ${plain} % as a percentage and ${asFraction} % as a fraction; it takes 30 to 100, 0.3 to 1, or text such as "${plain} %"`,
    );
  };
}

/** The number of a text that names no unit. */
function plainNumber(text: string, kind: Kind): number | undefined {
  const reading = readQuantity(text, kind);
  return reading.ok && !reading.unit ? reading.plain : undefined;
}

function choiceReader(words: readonly string[]): CellReader {
  const byFold = new Map(words.map((word) => [foldName(word), word]));
  return remembering((cell) => {
    const text = cellText(cell);
    const word = byFold.get(foldName(text));
    if (word === undefined)
      throw new Refusal(
        `is ${text === '' ? 'blank' : `"${text}"`}; it takes ${orList(words.map((w) => `"${w}"`))}`,
      );
    return word;
  });
}

function cellText(cell: CellValue): string {
  if (cell instanceof CellError) throw new PassedError(cell);
  if (cell === null) return '';
  return typeof cell === 'string' ? cell.trim() : String(cell);
}

/** Texts that one column is likely to repeat. */
const MOST_TEXTS = 500;

/** Keeps what texts were read as: tables and words never change, and to find a name as people write it takes its time. */
function remembering(read: CellReader): CellReader {
  const known = { in: new Map<string, unknown>(), mm: new Map<string, unknown>() };
  return (cell, system) => {
    if (typeof cell !== 'string') return read(cell, system);
    const before = known[system];
    const found = before.get(cell);
    if (found !== undefined) return found;
    const value = read(cell, system);
    if (before.size >= MOST_TEXTS) before.clear();
    before.set(cell, value);
    return value;
  };
}

function namedReader(reading: Extract<Reading, { as: 'named' }>): CellReader {
  const { what, read, number } = reading;
  const asNumber = number ? quantityReader(number.kind, number) : undefined;
  const asQuantity = (cell: CellValue, system: System): unknown =>
    number && asNumber ? number.means(asNumber(cell, system) as number) : undefined;
  const isDated = mayBeDate(reading);
  return remembering((cell, system) => {
    if (isDated && typeof cell === 'number' && isLikelyDate(cell))
      throw new Refusal(dateRefusal(cell, (name) => read(name, system, 'text')));
    if (number && (typeof cell === 'number' || isNumberText(cell, number.kind)))
      return asQuantity(cell, system);
    const text = cellText(cell);
    if (text === '' || text === '0') {
      throw new Refusal(`is ${text === '' ? 'blank' : '0'}; it takes ${what}`);
    }
    if (typeof cell === 'number') return read(text, system, 'number');
    try {
      return read(text, system, 'text');
    } catch (error) {
      // Figures that name nothing may still be the number itself.
      if (!number || !/^\d+$/.test(text) || !isNowhere(error)) throw error;
      try {
        return asQuantity(text, system);
      } catch {
        throw error;
      }
    }
  });
}

const isNowhere = (error: unknown): boolean => error instanceof Refusal && error.code === '#N/A';

/** Text that is a number and no name: with a unit of this kind, or with a point. Names may be figures, such as `6061`. */
function isNumberText(cell: CellValue, kind: Kind): boolean {
  // Most names begin with a letter: no need to look for a unit.
  if (typeof cell !== 'string' || !/^[\s\d.,+−Øø⌀∅¼-¾⅐-⅞-]/.test(cell)) return false;
  const reading = readQuantity(cell, kind);
  if (!reading.ok) return reading.problem === 'comma';
  return reading.unit !== undefined || /^\s*[+-]?\d*\.\d*(?:e[+-]?\d+)?\s*$/i.test(cell);
}

/** Reads any finite amount of a kind. */
export const amountReader = (kind: Kind): CellReader => quantityReader(kind, {});

const readers = new WeakMap<AnyInput, CellReader>();

/** The reader of an input's cells; made once. */
export function readerOf(input: AnyInput): CellReader {
  let reader = readers.get(input);
  if (!reader) {
    reader = makeReader(input.reading);
    readers.set(input, reader);
  }
  return reader;
}

function makeReader(reading: Reading): CellReader {
  switch (reading.as) {
    case 'quantity':
      return reading.kind === 'percent' ? percentReader(reading) : quantityReader(reading.kind, reading);
    case 'list':
      return quantityReader(reading.kind, reading);
    case 'choice':
      return choiceReader(reading.words);
    case 'named':
      return namedReader(reading);
    case 'set':
      return entryReader(reading);
    case 'text':
      return cellText;
  }
}

/** An entry of a set keeps what stands in its cell. */
function entryReader({ what, read, number }: Extract<Reading, { as: 'set' }>): CellReader {
  const meant = namedReader({ as: 'named', what, read, number });
  return (cell, system): Entry<unknown> => ({
    means: meant(cell, system),
    written: typeof cell === 'number' ? cell : cellText(cell),
  });
}

const defaults = new WeakMap<AnyInput, Partial<Record<System, unknown>>>();

/** The value of an input that was left out: its default, or undefined. Inputs that follow another are filled in later. */
export function defaultValue(input: AnyInput, system: System): unknown {
  if (input.default === undefined) return undefined;
  let known = defaults.get(input);
  if (!known) defaults.set(input, (known = {}));
  return (known[system] ??= readDefault(input, input.default, system));
}

function readDefault(input: AnyInput, standard: Amount, system: System): unknown {
  const { reading } = input;
  if (reading.as === 'quantity') return amountSI(standard, reading.kind);
  return readerOf(input)(standard, system);
}

export function readUnits(cell: CellValue): System {
  const system = systemNamed(cell);
  if (system) return system;
  const text = cellText(cell);
  throw new Refusal(`is ${text === '' ? 'blank' : `"${text}"`}; it takes "in" or "mm"`);
}
