import { CellError } from '../cells/value';
import type { CellValue } from '../cells/value';

/** A value as a worksheet would show it, with all its digits. */
export function cellText(value: CellValue): string {
  if (value === null) return '';
  if (value instanceof CellError) return value.code;
  return typeof value === 'boolean' ? String(value).toUpperCase() : String(value);
}

/** A value for a program to read. */
export function cellJson(value: CellValue): unknown {
  return value instanceof CellError ? { error: value.code, message: value.message } : value;
}
