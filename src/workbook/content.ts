import type { BookCell, BookContent } from '../sheet/content';
import type { Cell, Workbook } from '../package/model';
import { callsOurs, needsArrayMark } from '../package/spelling';

/** A workbook as its calculation takes it; `anew`: no stored value of a formula counts. */
export function contentOf(workbook: Workbook, anew = false): BookContent {
  const { sheets, names, date1904, iterates, isFromMacintosh } = workbook;
  return {
    names,
    date1904,
    ...(iterates && { iterates }),
    ...(isFromMacintosh && { isFromMacintosh }),
    sheets: sheets.map((sheet) => ({ ...sheet, cells: sheet.cells.map((cell) => bookCell(cell, anew)) })),
  };
}

/**
 * A formula is of the old kind unless the file marks it as one that spills. What no program has calculated yet is
 * taken as it will be saved, and our own functions spill as they do in Excel.
 */
function bookCell(cell: Cell, anew: boolean): BookCell {
  const { row, column, value, formula, spill } = cell;
  if (formula === undefined) return cell;
  const stored = anew ? { ...cell, value: null } : cell;
  if (spill) return stored;
  const isDynamic = value === null ? needsArrayMark(formula) : callsOurs(formula);
  return isDynamic ? { ...stored, spill: { top: row, left: column, bottom: row, right: column } } : stored;
}
