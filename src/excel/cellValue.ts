import { CellError, isErrorCode, type CellValue } from '../cells/value';

/** What a cell shows, from its value and the type that Excel gives for it. */
export const cellValue = (value: unknown, type: string | undefined): CellValue => {
  if (type === 'Empty') return null;
  if (type === 'Error') {
    const code = String(value);
    return isErrorCode(code) ? new CellError(code) : new CellError('#N/A', `Excel shows ${code}`);
  }
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return value;
  return null;
};
