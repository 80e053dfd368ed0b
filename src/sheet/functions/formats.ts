/** Numbers and dates as text, and back. */
import { format, isDateFormat } from 'numfmt';
import { CellError } from '../../cells/value';
import { DAYS_1904, numberInText, toNumber, toText } from '../coerce';
import { Keep, raise, Raised, type Scalar } from '../values';
import { roundTo } from './rounding';
import { inContext, plain } from './spec';
import { bounded } from './texts';

/** A value by a number format; the text of the spreadsheet, in English. */
export function formatted(value: Scalar, pattern: string, date1904: boolean): string {
  if (value instanceof CellError) return raise(value);
  if (typeof value === 'boolean') return toText(value);
  const number = typeof value === 'string' ? numberInText(value, date1904) : (value ?? 0);
  if (pattern === '') return number === undefined ? bounded(toText(value)) : '';
  try {
    if (number === undefined) return bounded(format(pattern, value, OPTIONS));
    if (!isDateFormat(pattern)) return ofNumber(pattern, number);
    // Only in the 1904 date system is there a time before the first day.
    if (number < 0 && !(date1904 && ELAPSED.test(pattern))) return raise('#VALUE!');
    if (saysElapsedTwice(pattern))
      throw new Keep(`The number format ${pattern} is not known well enough here.`);
    const moved = Math.abs(number) + (date1904 && !ELAPSED.test(pattern) ? DAYS_1904 : 0);
    if (moved >= END_OF_DATES) return raise('#VALUE!');
    return bounded(`${number < 0 ? '-' : ''}${format(pattern, moved, OPTIONS)}`);
  } catch (error) {
    if (error instanceof Raised || error instanceof Keep || isDateFormat(pattern)) throw error;
    throw new Keep(`The number format ${pattern} is not known here.`);
  }
}

/** Hours, minutes or seconds that go on beyond a day, an hour, a minute. */
const ELAPSED = /\[(?:h+|m+|s+)\]/i;
/** The first day of the year 10000, as a serial number. */
const END_OF_DATES = 2_958_466;

/** The library goes back to the hours of a day for an hour that stands by itself behind `[h]`. */
function saysElapsedTwice(pattern: string): boolean {
  const bare = pattern.replace(LITERALS, '').toLowerCase();
  const letter = ELAPSED.exec(bare)?.[0].charAt(1);
  return letter !== undefined && bare.replace(ELAPSED, '').includes(letter);
}
const LITERALS = /"[^"]*"|\\.|_./g;
const PLAIN_FRACTION = /^[^/]*[#0?] ?[#0?]+\/(?:[#0?]+|\d+)[^/]*$|^[^/#0?]*[#0?]+\/(?:[#0?]+|\d+)[^/]*$/;

/** Rounded beforehand on the digits that a person sees; the library rounds the binary number: 38.925 would be 38.92. */
function rounded(pattern: string, number: number): number {
  const sections = pattern.split(';');
  const bare = (sections[number < 0 && sections.length > 1 ? 1 : 0] ?? '').replace(LITERALS, '');
  const digits = /^[^.]*[#0?](,*)(?:\.([#0?]*)(,*))?%?[^#0?%,.]*$/.exec(bare);
  if (digits === null || /[[E/]/i.test(bare)) return number;
  const [, before = '', places = '', behind = ''] = digits;
  return roundTo(number, places.length + (bare.includes('%') ? 2 : 0) - 3 * (before.length + behind.length));
}

/** Commas between thousands where something else stands between the digits too. */
const BROKEN_GROUPS = /[#0?],+[#0?][^.]*[#0?][^#0?,.]+[#0?,]|[#0?][^#0?,.]+[#0?][^.]*[#0?],+[#0?]/;

/** Formats that the library is known to read otherwise than spreadsheets are left alone. */
function ofNumber(pattern: string, number: number): string {
  const sections = pattern.split(';');
  const [section = '', negative] = sections;
  const bare = section.replace(LITERALS, '');
  const isStrange =
    (/%.*%/.test(bare) ||
      BROKEN_GROUPS.test(section) ||
      (bare.includes('/') && (bare !== section || !PLAIN_FRACTION.test(bare)))) &&
    bare !== '';
  const shown = rounded(pattern, number);
  // What is below zero keeps its section, also where its digits are all 0.
  const isLost = number < 0 && shown === 0 && negative !== undefined && !/\[[<>=]/.test(pattern);
  if (isLost && negative === '') return '';
  const text = isStrange ? undefined : format(isLost ? negative : pattern, shown, OPTIONS);
  if (text === undefined || /\de[+-]\d/.test(text))
    throw new Keep(`The number format ${pattern} is not known well enough here.`);
  return bounded(text);
}
const OPTIONS = { throws: true, dateErrorThrows: true, locale: 'en-US' } as const;

/** Rounded to places (to tens, hundreds, below zero), with commas between thousands. */
function fixed(value: number, places: number, hasCommas: boolean): string {
  const digits = Math.trunc(places);
  if (digits > 127) return raise('#VALUE!');
  const rounded = roundTo(value, digits);
  const text = format(
    `${hasCommas ? '#,##0' : '0'}${digits > 0 ? `.${'0'.repeat(digits)}` : ''}`,
    Math.abs(rounded),
  );
  return bounded(`${rounded < 0 ? '-' : ''}${text}`);
}

function numberValue(text: string, decimal: string, group: string): number {
  const point = decimal.charAt(0);
  const comma = group.charAt(0);
  if (point === '' || comma === '' || point === comma) return raise('#VALUE!');
  const bare = text.replace(/\s/g, '');
  if (bare === '') return 0;
  const [whole = '', fraction, ...more] = bare.split(point);
  if (more.length > 0 || fraction?.includes(comma)) return raise('#VALUE!');
  const [, digits = '', percents = ''] =
    /^(.*?)(%*)$/.exec(whole.replaceAll(comma, '') + (fraction === undefined ? '' : `.${fraction}`)) ?? [];
  const number = numberInText(digits) ?? raise('#VALUE!');
  return number / 100 ** percents.length;
}

export const formats = [
  inContext('TEXT', 'vt', (context, value, pattern) => formatted(value, pattern, context.date1904)),
  inContext('VALUE', 's', (context, value) =>
    typeof value === 'boolean' ? raise('#VALUE!') : toNumber(value, context.date1904),
  ),
  plain('NUMBERVALUE', 'tt?t?', (text, decimal = '.', group = ',') => numberValue(text, decimal, group)),
  plain('FIXED', 'nn?b?', (value, places = 2, isBare = false) => fixed(value, places, !isBare)),
  plain('DOLLAR', 'nn?', (value, places = 2) => {
    const text = fixed(Math.abs(value), places, true);
    return value < 0 ? `($${text})` : `$${text}`;
  }),
];
