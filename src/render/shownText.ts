/** What a cell shows: its value in its number format, as wide as its column lets it. */
import { format, formatColor, isDateFormat } from 'numfmt';
import { generalText } from '../cells/numberText';
import { CellError, type CellValue } from '../cells/value';

export interface ShownText {
  readonly text: string;
  /** A color that the number format itself asks for. */
  readonly color?: string;
}

/** Days between the two systems that dates are counted in. */
const SINCE_1904 = 1462;

export function shownText(
  value: CellValue,
  numberFormat: string,
  fits: (text: string) => boolean,
  date1904: boolean,
): ShownText {
  if (value === null) return { text: '' };
  if (value instanceof CellError) return { text: value.code };
  if (typeof value === 'boolean') return { text: value ? 'TRUE' : 'FALSE' };
  if (typeof value === 'string' && (numberFormat === 'General' || numberFormat === '@'))
    return { text: value };
  if (typeof value === 'number' && numberFormat === 'General')
    return { text: generalText(value, fits) ?? hashes(fits) };
  try {
    const shifted =
      typeof value === 'number' && date1904 && isDateFormat(numberFormat) ? value + SINCE_1904 : value;
    if (typeof shifted === 'number' && shifted < 0 && isDateFormat(numberFormat)) return { text: '########' };
    const text = format(numberFormat, shifted, { throws: true });
    const color = formatColor(numberFormat, shifted);
    return {
      text: typeof value === 'number' && !fits(text) ? hashes(fits) : text,
      ...(typeof color === 'string' && { color }),
    };
  } catch {
    // A format that no date or number can be written in: the plain value, never nothing.
    return { text: typeof value === 'number' ? (generalText(value, fits) ?? hashes(fits)) : value };
  }
}

function hashes(fits: (text: string) => boolean): string {
  let text = '#';
  while (text.length < 40 && fits(`${text}#`)) text += '#';
  return text;
}
