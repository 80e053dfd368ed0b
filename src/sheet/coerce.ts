/** How a spreadsheet reads one kind of scalar as another. */
import { parseValue } from 'numfmt';
import { CellError } from '../cells/value';
import { Keep, raise, type Scalar } from './values';

/** Days between the first days of the two date systems of workbooks. */
export const DAYS_1904 = 1462;

/** A number from a scalar, text as a person would type it into a cell (dates, percent, money). Raises errors and `#VALUE!`. */
export function toNumber(value: Scalar, date1904 = false): number {
  if (typeof value === 'number') return value;
  if (value === null) return 0;
  if (typeof value === 'boolean') return value ? 1 : 0;
  if (value instanceof CellError) return raise(value);
  return numberInText(value, date1904) ?? raise('#VALUE!');
}

const PLAIN = /^\s*[+-]?(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?\s*$/i;

/** The number that a text stands for; undefined where it stands for none. */
export function numberInText(text: string, date1904 = false): number | undefined {
  if (PLAIN.test(text)) {
    const number = Number(text);
    return Number.isFinite(number) ? number : undefined;
  }
  // No text without a digit is a number, and none so long.
  if (text.length > 64 || !/\d/.test(text)) return undefined;
  const mixed = MIXED.exec(text);
  if (mixed !== null) return mixedNumber(mixed);
  if (DAY_FIRST.test(text)) throw new Keep(`${text} is a date only with the day first.`);
  const found = parseValue(text.trim()) as { v: unknown; z?: string } | null;
  if (found === null || typeof found.v !== 'number') return undefined;
  return date1904 && isDay(found.z) ? found.v - DAYS_1904 : found.v;
}

/** `1 1/2`; a fraction without whole is a date. */
const MIXED = /^\s*([+-])?\s*(\d+) +(\d+)\/(\d+)\s*$/;

function mixedNumber([, sign, whole, above, below]: RegExpExecArray): number | undefined {
  const number = Number(whole) + Number(above) / Number(below);
  return Number.isFinite(number) ? (sign === '-' ? -number : number) : undefined;
}

/** Other countries read it as a date, this language's spreadsheet as text: nobody knows what its author saw. */
const DAY_FIRST = /^\s*(?:1[3-9]|2\d|3[01])[/-](?:0?[1-9]|1[0-2])[/-]\d{2,4}\s*$/;

const isDay = (format: string | undefined): boolean => format !== undefined && /[dy]/i.test(format);

export function toLogical(value: Scalar): boolean {
  if (typeof value === 'boolean') return value;
  if (typeof value === 'number') return value !== 0;
  if (value === null) return false;
  if (value instanceof CellError) return raise(value);
  const word = value.toUpperCase();
  return word === 'TRUE' ? true : word === 'FALSE' ? false : raise('#VALUE!');
}

export function toText(value: Scalar): string {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return numberText(value);
  if (value === null) return '';
  if (value instanceof CellError) return raise(value);
  return value ? 'TRUE' : 'FALSE';
}

/** A number as `&` writes it: 15 digits, an exponent only where the digits would not fit in 20 places. */
export function numberText(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e15) return String(value === 0 ? 0 : value);
  const [mantissa = '', power = '0'] = value.toExponential(14).split('e');
  const digits = mantissa.replace(/\.?0+$/, '');
  const exponent = Number(power);
  const count = digits.replace(/[-.]/g, '').length;
  const places = exponent >= 0 ? Math.max(exponent + 1, count + 1) : count - exponent + 1;
  if (places <= 21) return fixedText(digits, exponent);
  return `${digits}E${exponent < 0 ? '-' : '+'}${String(Math.abs(exponent)).padStart(2, '0')}`;
}

function fixedText(mantissa: string, exponent: number): string {
  const sign = mantissa.startsWith('-') ? '-' : '';
  const digits = mantissa.replace(/[-.]/g, '');
  if (exponent < 0) return `${sign}0.${'0'.repeat(-exponent - 1)}${digits}`;
  if (digits.length <= exponent + 1) return sign + digits.padEnd(exponent + 1, '0');
  return `${sign}${digits.slice(0, exponent + 1)}.${digits.slice(exponent + 1)}`;
}
