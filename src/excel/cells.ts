/// <reference types="custom-functions-runtime" />
import type { Argument, CellValue, ErrorCode, Matrix } from '../cells/value';
import { CellError } from '../cells/value';
import type { ParameterWords } from '../derive/words';

/** What Excel's functions runtime takes back: a matrix, or one error for the whole answer. */
export type ExcelAnswer = (number | string | boolean | CustomFunctions.Error)[][] | CustomFunctions.Error;

/**
 * The arguments of a call as Excel gives them: one entry for each declared parameter, `null` where it was left out,
 * then the invocation object. A sheet written for an older version gives fewer, so the invocation object may stand
 * where a newer parameter is expected; it counts as left out. A repeating parameter comes as one list of matrices.
 */
export const readArguments = (
  parameters: readonly Pick<ParameterWords, 'repeating'>[],
  given: readonly unknown[],
): Argument[] =>
  parameters.flatMap(({ repeating }, i) =>
    repeating && isListOfMatrices(given[i]) ? given[i].map(readArgument) : [readArgument(given[i])],
  );

const readArgument = (given: unknown): Argument => {
  if (Array.isArray(given)) return given.map((row: unknown[]) => row.map(readCell));
  if (given === null || given === undefined || isInvocation(given)) return null;
  return [[readCell(given)]];
};

const readCell = (value: unknown): CellValue => {
  if (typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean') return value;
  if (value === null || value === undefined) return null;
  if (isError(value)) return new CellError(value.code);
  return new CellError(
    '#VALUE!',
    'This cell holds a data type; take the number or the text out of it first.',
  );
};

export const writeAnswer = (answer: Matrix): ExcelAnswer => {
  const only = answer.length === 1 && answer[0]?.length === 1 ? answer[0][0] : undefined;
  // Alone, an error is given bare: the documented form, whose message every version of Excel keeps.
  if (only instanceof CellError) return excelError(only);
  return answer.map((row) => row.map(writeCell));
};

const writeCell = (value: CellValue): number | string | boolean | CustomFunctions.Error => {
  if (value instanceof CellError) return excelError(value);
  // Excel shows 0 for null.
  return value ?? '';
};

/** The codes that Excel takes back from a function; all others it only hands in. */
const RETURNABLE: ReadonlySet<ErrorCode> = new Set(['#VALUE!', '#N/A', '#NUM!', '#DIV/0!', '#NULL!']);

const excelError = ({ code, message }: CellError): CustomFunctions.Error => {
  if (!RETURNABLE.has(code)) return customError('#VALUE!', message || `An argument is ${code}`);
  // Excel drops the message of the other codes, and the runtime warns when one is given.
  return message && (code === '#VALUE!' || code === '#N/A') ? customError(code, message) : customError(code);
};

const customError = (code: ErrorCode, message?: string): CustomFunctions.Error => {
  // The enum's values are the texts that a cell shows, which is also how our codes are written; its type is nominal.
  const excelCode: unknown = code;
  return new CustomFunctions.Error(excelCode as CustomFunctions.ErrorCode, message);
};

const isListOfMatrices = (value: unknown): value is unknown[][][] =>
  Array.isArray(value) && Array.isArray(value[0]) && Array.isArray(value[0][0]);

const isError = (value: unknown): value is { readonly code: ErrorCode } =>
  typeof value === 'object' && value !== null && 'code' in value && /^#/.test(String(value.code));

const isInvocation = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'functionName' in value;
