import { cellAddress } from '../../cells/address';
import { CellError } from '../../cells/value';
import type { Scalar } from '../values';

/** `Insert!B7`, `'Two words'!B7`. */
export function placeName(sheet: string, row: number, column: number): string {
  const name = /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`;
  return `${name}!${cellAddress(row, column)}`;
}

/** A value as it stands in its cell: an error remembers the first cell that it stood in. */
export function begun(value: Scalar, sheet = '', row: number, column: number): Scalar {
  if (!(value instanceof CellError) || value.origin !== undefined) return value;
  return new CellError(value.code, value.message, placeName(sheet, row, column));
}

/** An error as it is told in a cell: what began elsewhere says where. */
export function told(error: CellError, sheet: string, row: number, column: number): CellError {
  const { code, message, origin } = error;
  if (origin === undefined || origin === placeName(sheet, row, column)) return new CellError(code, message);
  return new CellError(code, message === '' ? `${origin} is ${code}` : `${origin}: ${message}`);
}
