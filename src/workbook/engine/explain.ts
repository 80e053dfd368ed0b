import { CellError } from '../../call/cell';
import type { ErrorCode } from '../../call/cell';
import { cellAddress, parseArea } from '../model';
import type { Workbook } from '../model';
import type { Calculator } from './calculator';

/** What a native error means, where nothing closer is known. */
const MEANING: Readonly<Record<ErrorCode, string>> = {
  '#VALUE!': 'A value of the wrong kind: text where a number is needed, or a formula that cannot be read.',
  '#N/A': 'A look-up found nothing.',
  '#NUM!': 'A number outside what the function can take.',
  '#DIV/0!': 'A division by zero or by a blank cell.',
  '#REF!': 'It refers to a cell that is not there.',
  '#NAME?': 'It uses a function or name that is not known.',
  '#NULL!': 'Two ranges that do not meet.',
  '#SPILL!': 'The result needs more cells than are free: clear the ones beside or below.',
  '#CALC!': 'A calculation that gives nothing, such as a filter without a match.',
};

export function meaningOf(code: ErrorCode): string {
  return MEANING[code];
}

/** Cells and areas of a formula, with their sheet; text in quotes is told apart first. */
const REFERENCE =
  /"(?:[^"]|"")*"|(?:'((?:[^']|'')+)'!|([\p{L}_][\p{L}\p{N}_.]*)!)?(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)(?![\p{L}\p{N}_.(!])/giu;

/** The error of a formula's cell, with a message in any case: its own, the cell it comes from, or what the code means. */
export function explain(
  error: CellError,
  formula: string,
  sheet: number,
  workbook: Workbook,
  calculator: Calculator,
): CellError {
  if (error.message) return error;
  const source = firstInError(formula, sheet, workbook, calculator);
  return new CellError(error.code, source ? `Passed on from ${source}.` : meaningOf(error.code));
}

/** The first cell in error that the formula reads, by address. */
function firstInError(
  formula: string,
  sheet: number,
  workbook: Workbook,
  calculator: Calculator,
): string | undefined {
  for (const [, quoted, plain, address] of formula.matchAll(REFERENCE)) {
    if (address === undefined) continue;
    const named = quoted?.replaceAll("''", "'") ?? plain;
    const index =
      named === undefined
        ? sheet
        : workbook.sheets.findIndex(({ name }) => name.toLowerCase() === named.toLowerCase());
    const area = parseArea(address);
    if (index < 0 || area === undefined) continue;
    for (let row = area.top; row <= area.bottom; row++) {
      for (let column = area.left; column <= area.right; column++) {
        if (!(calculator.value(index, row, column) instanceof CellError)) continue;
        const where = cellAddress(row, column);
        return index === sheet ? where : `${workbook.sheets[index]?.name ?? ''}!${where}`;
      }
    }
  }
  return undefined;
}
