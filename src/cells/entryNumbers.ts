/**
 * How the grid reads what is typed, pasted or filled: `numfmt`, but for what is a date elsewhere and none in a tool
 * room. `5/8` and `1-1/2` are numbers, `10-24` and `1/4-20` are threads, and no date is without a year. `5/8"` is text, as
 * in Excel: functions read its inches in any units, where the bare number would count in those of the sheet.
 */
import * as numfmt from 'numfmt';
import { inStandardForm } from './decimalSign';

export * from 'numfmt';

type Parsed = ReturnType<typeof numfmt.parseNumber>;

/** A sign, a whole part with a blank or a hyphen behind it, numerator, denominator. */
const FRACTION = /^([+-]?)\s*(?:(\d+)(?:\s+|\s*-\s*))?(\d{1,3})\s*[/⁄]\s*(\d{1,3})$/;

/** `10-24`, `#10-24`, `1/4-20`, `1-1/2 - 6`: a size and threads per inch. */
const THREAD = /^#?\d{1,2}(?:(?:\s*[-\s]\s*\d+)?\s*\/\s*\d+)?\s*-\s*\d{1,3}(?:\.\d+)?$/;

/** A fraction or mixed number, in a format that shows it as it was typed. */
export function parseFraction(text: string): Parsed {
  const [, sign = '', whole, top = '', bottom = ''] = FRACTION.exec(text.trim()) ?? [];
  if (bottom === '' || Number(bottom) === 0) return null;
  const value = Number(whole ?? 0) + Number(top) / Number(bottom);
  const numerator = '?'.repeat(whole === undefined ? top.length : bottom.length);
  return {
    v: sign === '-' ? -value : value,
    z: `${whole === undefined ? '' : '# '}${numerator}/${bottom}`,
  };
}

const isThread = (text: string): boolean => THREAD.test(text.trim());

export function parseDate(text: string): Parsed {
  const fraction = parseFraction(text);
  if (fraction || isThread(text)) return fraction;
  return namesYear(text) ? numfmt.parseDate(text) : null;
}

/** Day, month and year, or a year in full: `Oct 24` may be a day or a year. */
const namesYear = (text: string): boolean =>
  /\d{4}/.test(text) || (text.match(/[a-z]+|\d+/gi)?.length ?? 0) >= 3;

export function parseTime(text: string): Parsed {
  return isThread(text) ? null : numfmt.parseTime(text);
}

/** Whole thousands between commas; `0,25` is no 25. */
const GROUPED = /^\D*\d{1,3}(?:,\d{3})+(?:\.\d*)?[^\d,]*$/;

/** Feet, minutes or, twice, inches: no sign between thousands. */
const PRIME = /'(?!\d{3}(?:\D|$))/;

export function parseNumber(text: string): Parsed {
  const standard = inStandardForm(text);
  if (isThread(text) || PRIME.test(standard) || (standard.includes(',') && !GROUPED.test(standard)))
    return null;
  return numfmt.parseNumber(standard);
}

/** In the order in which the grid asks: a date, a time, a number; null for text. */
export const readEntry = (text: string): Parsed =>
  parseDate(text) ?? parseTime(text) ?? parseNumber(text) ?? null;
