/** What the operators do with two scalars. They answer with errors and raise none. */
import { CellError } from '../../cells/value';
import { toNumber, toText } from '../coerce';
import { compare } from '../compare';
import { ERRORS, Raised, type Scalar } from '../values';

export type Binary = (a: Scalar, b: Scalar, date1904: boolean) => Scalar;
export type Unary = (a: Scalar, date1904: boolean) => Scalar;

/** The longest text a cell can hold. */
export const LONGEST_TEXT = 32_767;

const finite = (value: number): Scalar => (Number.isFinite(value) ? value : ERRORS['#NUM!']);

/**
 * A difference that is nothing but the last digits of its parts is zero: 0.1+0.2-0.3 is 0 in a worksheet. The parts
 * must agree in all but the last three of their 52 binary digits.
 */
const NEARLY_ZERO = 2 ** -49;

const sum = (a: number, b: number): Scalar => {
  const value = a + b;
  if (Math.abs(value) < Math.abs(a) * NEARLY_ZERO && value !== 0) return 0;
  return finite(value);
};

const power = (a: number, b: number): Scalar => {
  if (a === 0 && b === 0) return ERRORS['#NUM!'];
  if (a === 0 && b < 0) return ERRORS['#DIV/0!'];
  if (b === 2) return finite(a * a);
  if (a < 0 && !Number.isInteger(b)) {
    // Odd roots of negative numbers are real: (-8)^(1/3) is -2.
    const root = Math.round(1 / b);
    return Math.abs(1 / b - root) < 1e-12 && root % 2 !== 0 ? finite(-((-a) ** b)) : ERRORS['#NUM!'];
  }
  return finite(a ** b);
};

const arithmetic =
  (of: (a: number, b: number) => Scalar): Binary =>
  (a, b, date1904) => {
    if (typeof a === 'number' && typeof b === 'number') return of(a, b);
    return guarded(() => of(toNumber(a, date1904), toNumber(b, date1904)));
  };

const comparison =
  (of: (order: number) => boolean): Binary =>
  (a, b) => {
    if (a instanceof CellError) return a;
    if (b instanceof CellError) return b;
    return of(compare(a, b));
  };

const joined: Binary = (a, b) => {
  if (a instanceof CellError) return a;
  if (b instanceof CellError) return b;
  const text = toText(a) + toText(b);
  return text.length > LONGEST_TEXT ? TOO_LONG : text;
};

export const TOO_LONG = new CellError('#VALUE!', `A text may have ${LONGEST_TEXT} characters.`);

/** What a part raises as the error that it is. */
export function guarded(part: () => Scalar): Scalar {
  try {
    return part();
  } catch (error) {
    if (error instanceof Raised) return error.cell;
    throw error;
  }
}

export const BINARY: Readonly<Record<string, Binary>> = {
  '+': arithmetic(sum),
  '-': arithmetic((a, b) => sum(a, -b)),
  '*': arithmetic((a, b) => finite(a * b)),
  '/': arithmetic((a, b) => (b === 0 ? ERRORS['#DIV/0!'] : finite(a / b))),
  '^': arithmetic(power),
  '&': joined,
  '=': comparison((order) => order === 0),
  '<>': comparison((order) => order !== 0),
  '<': comparison((order) => order < 0),
  '>': comparison((order) => order > 0),
  '<=': comparison((order) => order <= 0),
  '>=': comparison((order) => order >= 0),
};

export const UNARY: Readonly<Record<string, Unary>> = {
  '+': (a) => a,
  '-': (a, date1904) => (typeof a === 'number' ? -a : guarded(() => -toNumber(a, date1904))),
  '%': (a, date1904) => (typeof a === 'number' ? a / 100 : guarded(() => toNumber(a, date1904) / 100)),
};
