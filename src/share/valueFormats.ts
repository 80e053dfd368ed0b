import type { CellValue } from '../cells/value';
import type { StyleDescription } from '../package/description';

const DIGITS = 6;
/** A number with more is written with its power of ten. */
const MOST_DECIMALS = 9;

/** A format of one's own, without which LibreOffice shows as TRUE a number that an IF beside a FALSE gives. */
const PLAIN = 'General;-General';
const POWER = `0.${'0'.repeat(DIGITS - 1)}E+00`;

/**
 * Six digits for a number of this size and for larger ones; it may become one that these decimals would hide. The
 * condition stands first: in a section for all else LibreOffice leaves out the sign of a negative number.
 */
const sized = (decimals: number): string =>
  `[<${10 ** (DIGITS - 3 - decimals)}]${POWER};${decimals === 0 ? '#,##0' : `0.${'0'.repeat(decimals)}`}`;

const SIZES = Array.from({ length: MOST_DECIMALS + 1 }, (_, i) => i);

/** A style once for each format in which its values may stand. */
export const inFormats = (name: string, style: StyleDescription): Record<string, StyleDescription> => ({
  [name]: style,
  [`${name} plain`]: { ...style, numberFormat: PLAIN },
  [`${name} power`]: { ...style, numberFormat: POWER },
  ...Object.fromEntries(SIZES.map((size) => [`${name} ${size}`, { ...style, numberFormat: sized(size) }])),
});

/** The style of `inFormats` for a value. */
export function styleFor(name: string, value: CellValue): string {
  // With a format LibreOffice would save the number 1 for TRUE.
  if (typeof value !== 'number') return name;
  const digits = String(Math.abs(value)).replace('.', '');
  if (digits.length <= DIGITS) return `${name} plain`;
  const decimals = DIGITS - 1 - Math.floor(Math.log10(value));
  return value < 0 || decimals > MOST_DECIMALS ? `${name} power` : `${name} ${Math.max(0, decimals)}`;
}
