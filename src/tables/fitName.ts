import { systemUnit, toSI, type System } from '../core/quantity';
import { readQuantity } from '../core/readQuantity';
import { Refusal } from '../core/refusal';
import { GRADES, LETTERS, PREFERRED_FITS } from './iso286';
import { nearestNames, UnknownName } from './names';
import { plainMarks, refuseComma, SIGN_OF_BY, withoutDiameterSign } from './sizeText';

/** A tolerance class or a fit as a drawing has it, perhaps with its nominal size (m) before it. */
export interface WrittenClass {
  readonly size?: number;
  /** `H7`, `g6`, `js5`. */
  readonly name: string;
}
export interface WrittenFit {
  readonly size?: number;
  readonly hole: string;
  readonly shaft: string;
}

// Longer ones first: `js6` is no `j`.
const letters = [...LETTERS].sort((a, b) => b.length - a.length).join('|');
const HOLE = String.raw`(?:${letters.toUpperCase()}) ?\d{1,2}`;
const SHAFT = String.raw`(?:${letters}) ?\d{1,2}`;
/** What stands before the classes: nothing, or a size with or without its unit. */
const SIZE = String.raw`(?<size>[\d.][\d./ -]*?(?: ?(?:mm|in|"))?)?(?: ?- ?| )?`;
const CLASS = new RegExp(`^${SIZE}(?<name>${HOLE}|${SHAFT})$`);
const FIT = new RegExp(`^${SIZE}(?<hole>${HOLE})(?: ?[/-] ?| |)(?<shaft>${SHAFT})$`);

const closed = (written = ''): string => written.replace(' ', '');

function sizeOf(text: string | undefined, given: string, system: System): { size?: number } {
  if (text === undefined || text === '') return {};
  const reading = readQuantity(text, 'length');
  if (!reading.ok) throw new UnknownName('size before a tolerance class', given, []);
  return { size: reading.unit ? reading.si : toSI(reading.plain, systemUnit('length', system)) };
}

const marked = (given: string): string => {
  refuseComma(given);
  if (SIGN_OF_BY.test(given)) return '';
  return withoutDiameterSign(plainMarks(given));
};

/** `H7`, `g6`, `25H7`, `Ø25 H7`, `1 in H7`. Capitals are a hole, small letters a shaft. */
export function readClass(given: string, system: System = 'mm'): WrittenClass {
  const text = marked(given);
  const groups = CLASS.exec(text)?.groups;
  if (groups) return { ...sizeOf(groups['size'], given, system), name: closed(groups['name']) };
  if (FIT.test(text)) throw new Refusal(`is "${given}", a fit of two classes; it takes one of them`);
  throw new UnknownName('tolerance class', given, nearestNames(given, USUAL_CLASSES));
}

/** `H7/g6`, `H7-g6`, `H7 g6`, `25 H7/g6`, `Ø25 H7/g6`: the hole first. */
export function readFit(given: string, system: System = 'mm'): WrittenFit {
  const groups = FIT.exec(marked(given))?.groups;
  if (groups)
    return {
      ...sizeOf(groups['size'], given, system),
      hole: closed(groups['hole']),
      shaft: closed(groups['shaft']),
    };
  throw new UnknownName('fit (hole class / shaft class)', given, nearestNames(given, PREFERRED_FITS));
}

const USUAL_CLASSES = ['H7', 'H8', 'H9', 'g6', 'h6', 'm6', 'p6', 'f7', 'e8'];

/** `IT7`, `it 7`, `7`: the grade's number. */
export function readGrade(given: string): string {
  const number = /^(?:IT ?)?(\d{1,2})$/i.exec(plainMarks(given))?.[1];
  if (number !== undefined && GRADES.includes(number)) return number;
  const names = GRADES.map((grade) => `IT${grade}`);
  throw new UnknownName(
    'standard tolerance grade',
    given,
    number === undefined ? nearestNames(given, names) : names.slice(-3).reverse(),
  );
}
