/** Numbers in other bases, as digits and as bits; Roman numerals. */
import type { CellError } from '../../cells/value';
import { toText } from '../coerce';
import { raise, type Scalar } from '../values';
import { strictNumber } from './numbersIn';
import { plain } from './spec';

type Cell = Exclude<Scalar, CellError>;

/** Ten digits at most; the upper half of them stands for negative numbers. */
const DIGITS = 10;

interface Base {
  readonly name: string;
  readonly radix: number;
}
const BIN: Base = { name: 'BIN', radix: 2 };
const OCT: Base = { name: 'OCT', radix: 8 };
const HEX: Base = { name: 'HEX', radix: 16 };

function read(value: Cell, { radix }: Base): number {
  if (typeof value === 'boolean') return raise('#VALUE!');
  const digits = value === null ? '0' : toText(value).trim() || '0';
  const all = radix ** DIGITS;
  if (digits.length > DIGITS || !isOf(digits, radix)) return raise('#NUM!');
  const number = parseInt(digits, radix);
  return number >= all / 2 ? number - all : number;
}

const isOf = (digits: string, radix: number): boolean =>
  Array.from(digits).every((digit) => /[0-9a-z]/i.test(digit) && parseInt(digit, 36) < radix);

function write(number: number, { radix }: Base, places: Cell | undefined): string {
  const all = radix ** DIGITS;
  if (number < -all / 2 || number >= all / 2) return raise('#NUM!');
  if (number < 0) return (number + all).toString(radix).toUpperCase();
  const digits = number.toString(radix).toUpperCase();
  if (places === undefined || places === null) return digits;
  const width = Math.trunc(strictNumber(places));
  return width < digits.length || width > DIGITS ? raise('#NUM!') : digits.padStart(width, '0');
}

const between = (from: Base, to: Base) =>
  plain(`${from.name}2${to.name}`, 'ff?', (value, places) => write(read(value, from), to, places));
const toDecimal = (from: Base) => plain(`${from.name}2DEC`, 'f', (value) => read(value, from));
const fromDecimal = (to: Base) =>
  plain(`DEC2${to.name}`, 'ff?', (value, places) => write(Math.trunc(strictNumber(value)), to, places));

function inBase(value: number, radix: number, least: number): string {
  const [number, base, width] = [Math.trunc(value), Math.trunc(radix), Math.trunc(least)];
  if (number < 0 || number >= 2 ** 53 || base < 2 || base > 36 || width < 0 || width > 255)
    return raise('#NUM!');
  return number.toString(base).toUpperCase().padStart(width, '0');
}

function ofBase(text: string, radix: number): number {
  const base = Math.trunc(radix);
  if (base < 2 || base > 36 || text.length > 255) return raise('#NUM!');
  let digits = text.trim().toLowerCase();
  if (base === 16) digits = digits.replace(/^0?x/, '').replace(/h$/, '');
  if (base === 2) digits = digits.replace(/b$/, '');
  if (!isOf(digits, base)) return raise('#NUM!');
  return Array.from(digits).reduce((number, digit) => number * base + parseInt(digit, 36), 0);
}

/** Bits are those of whole numbers below 2^48. */
const BITS = 2 ** 48;
const bits = (value: number): bigint =>
  value < 0 || value >= BITS || !Number.isInteger(value) ? raise('#NUM!') : BigInt(value);
const bitwise = (name: string, join: (a: bigint, b: bigint) => bigint) =>
  plain(name, 'nn', (a, b) => Number(join(bits(a), bits(b))));
function shifted(value: number, places: number): number {
  bits(value);
  const by = Math.trunc(places);
  if (Math.abs(by) > 53) return raise('#NUM!');
  const result = Math.floor(value * 2 ** by);
  return result >= BITS ? raise('#NUM!') : result;
}

const ROMAN = [1000, 500, 100, 50, 10, 5, 1] as const;
const LETTERS = 'MDCLXVI';

/** `concise`: how many signs beyond the usual one a letter may be taken from. */
function roman(value: number, concise: number): string {
  let rest = Math.trunc(value);
  if (rest < 0 || rest > 3999 || concise < 0 || concise > 4) return raise('#VALUE!');
  let text = '';
  for (let sign = 0; sign < ROMAN.length; sign += 2) {
    const unit = ROMAN[sign] as number;
    const digit = Math.floor(rest / unit);
    if (digit % 5 !== 4) {
      if (digit > 4) text += LETTERS.charAt(sign - 1);
      text += LETTERS.charAt(sign).repeat(digit % 5);
      rest %= unit;
      continue;
    }
    const from = digit === 4 ? sign - 1 : sign - 2;
    let less = sign;
    for (let step = 0; step < concise && less < ROMAN.length - 1; step++) {
      if ((ROMAN[from] as number) - (ROMAN[less + 1] as number) > rest) break;
      less++;
    }
    text += LETTERS.charAt(less) + LETTERS.charAt(from);
    rest += (ROMAN[less] as number) - (ROMAN[from] as number);
  }
  return text;
}

function arabic(text: string): number {
  const trimmed = text.trim().toUpperCase();
  const isNegative = trimmed.startsWith('-');
  const digits = isNegative ? trimmed.slice(1) : trimmed;
  if (text.length > 255 || !/^[MDCLXVI]*$/.test(digits)) return raise('#VALUE!');
  const values = Array.from(digits, (letter) => ROMAN[LETTERS.indexOf(letter)] as number);
  const sum = values.reduce((total, value, i) => total + (value < (values[i + 1] ?? 0) ? -value : value), 0);
  return isNegative ? -sum : sum;
}

export const bases = [
  between(BIN, OCT),
  between(BIN, HEX),
  between(OCT, BIN),
  between(OCT, HEX),
  between(HEX, BIN),
  between(HEX, OCT),
  ...[BIN, OCT, HEX].flatMap((base) => [toDecimal(base), fromDecimal(base)]),
  plain('BASE', 'nnn?', (value, radix, least = 0) => inBase(value, radix, least)),
  plain('DECIMAL', 'tn', ofBase),
  bitwise('BITAND', (a, b) => a & b),
  bitwise('BITOR', (a, b) => a | b),
  bitwise('BITXOR', (a, b) => a ^ b),
  plain('BITLSHIFT', 'nn', shifted),
  plain('BITRSHIFT', 'nn', (value, places) => shifted(value, -places)),
  plain('ROMAN', 'ns?', (value, form) =>
    roman(
      value,
      form === true || form === undefined ? 0 : form === false ? 4 : Math.trunc(strictNumber(form)),
    ),
  ),
  plain('ARABIC', 't', arabic),
];
