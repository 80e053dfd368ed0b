import { isDateFormat } from 'numfmt';
import { MAX_COLUMNS } from '../cells/address';
import type { BookCell, BookContent, BookSheet } from '../sheet/content';
import type { Cell, Sheet, Workbook } from '../package/model';
import { callsOurs, needsArrayMark } from '../package/spelling';

/** A workbook as its calculation takes it; `anew`: no stored value of a formula counts. */
export function contentOf(workbook: Workbook, anew = false): BookContent {
  const { sheets, names, date1904, iterates, isFromMacintosh, styles } = workbook;
  const dated = new Set(styles.flatMap(({ numberFormat }, i) => (isDateFormat(numberFormat) ? [i] : [])));
  return {
    names,
    date1904,
    ...(iterates && { iterates }),
    ...(isFromMacintosh && { isFromMacintosh }),
    sheets: sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) => bookCell(cell, anew)),
      ...datesOf(sheet, dated),
    })),
  };
}

/** The cells of a sheet in a date format, where there are any. */
function datesOf({ cells }: Sheet, dated: ReadonlySet<number>): Pick<BookSheet, 'isDate'> {
  if (dated.size === 0) return {};
  const places = new Set(
    cells.flatMap(({ row, column, style }) => (dated.has(style) ? [row * MAX_COLUMNS + column] : [])),
  );
  return places.size === 0 ? {} : { isDate: (row, column) => places.has(row * MAX_COLUMNS + column) };
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
