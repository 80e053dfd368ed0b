import { CellError, type CellValue, type ErrorCode } from '../cells/value';

const ERROR_CODES: ReadonlySet<string> = new Set<ErrorCode>([
  '#VALUE!',
  '#N/A',
  '#NUM!',
  '#DIV/0!',
  '#REF!',
  '#NAME?',
  '#NULL!',
  '#SPILL!',
  '#CALC!',
]);

/** What a cell shows, from its value and the type that Excel gives for it. */
export const cellValue = (value: unknown, type: string | undefined): CellValue => {
  if (type === 'Empty') return null;
  if (type === 'Error') {
    const code = String(value);
    return ERROR_CODES.has(code)
      ? new CellError(code as ErrorCode)
      : new CellError('#N/A', `Excel shows ${code}`);
  }
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return value;
  return null;
};
