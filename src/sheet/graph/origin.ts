import { cellAddress } from '../../cells/address';
import { CellError, type ErrorCode } from '../../cells/value';
import type { Scalar } from '../values';

/** `Insert!B7`, `'Two words'!B7`. */
export function placeName(sheet: string, row: number, column: number): string {
  const name = /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`;
  return `${name}!${cellAddress(row, column)}`;
}

/** A value as it stands in its cell: an error remembers the first cell that it stood in. */
export function begun(value: Scalar, sheet: string | undefined, row: number, column: number): Scalar {
  if (!(value instanceof CellError) || value.origin !== undefined) return value;
  return new CellError(value.code, value.message, placeName(sheet ?? '', row, column));
}

/** What an error means, where nothing closer is known. */
const MEANING: Readonly<Record<ErrorCode, string>> = {
  '#VALUE!': 'A value of the wrong kind: text where a number is needed, or a range where one cell is.',
  '#N/A': 'A look-up found nothing.',
  '#NUM!': 'A number outside what the function can take.',
  '#DIV/0!': 'A division by zero or by a blank cell.',
  '#REF!': 'It refers to a cell that is not there.',
  '#NAME?': 'It uses a function or name that is not known.',
  '#NULL!': 'Two ranges that do not meet.',
  '#SPILL!': 'The result needs more cells than are free: clear the ones beside or below.',
  '#CALC!': 'A calculation that gives nothing, such as a filter without a match.',
};

/** An error as it is told in a cell: in any case with words, and with the place where it began if that is another. */
export function told({ code, message, origin }: CellError, place: string): CellError {
  // Files know codes that are none of ours.
  const words = message || (MEANING as Readonly<Record<string, string | undefined>>)[code] || code;
  return new CellError(code, origin === undefined || origin === place ? words : `${origin}: ${words}`);
}
