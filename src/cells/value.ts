/** What a worksheet cell can hold, as all hosts (Excel, page, command line) exchange it with the functions. */
const ERROR_CODES = [
  '#VALUE!',
  '#N/A',
  '#NUM!',
  '#DIV/0!',
  '#REF!',
  '#NAME?',
  '#NULL!',
  '#SPILL!',
  '#CALC!',
] as const;
export type ErrorCode = (typeof ERROR_CODES)[number];

export const isErrorCode = (text: string): text is ErrorCode =>
  (ERROR_CODES as readonly string[]).includes(text);

/**
 * A cell in error. `message` tells a person what to change; errors that only pass through us have none. `origin` names
 * the cell of a workbook where it began, `Insert!B7`, once it stands in one.
 */
export class CellError {
  declare readonly origin?: string;

  constructor(
    readonly code: ErrorCode,
    readonly message = '',
    origin?: string,
  ) {
    if (origin !== undefined) this.origin = origin;
  }

  toString(): string {
    return this.code;
  }
}

/** `null` is a blank cell. */
export type CellValue = number | string | boolean | null | CellError;

/** Rows of cells; rectangular, at least 1 × 1. */
export type Matrix = readonly (readonly CellValue[])[];

/** An argument as typed: a matrix (a single cell or constant is 1 × 1), or null/undefined where it was left out. */
export type Argument = Matrix | null | undefined;
