/// <reference types="office-js" />
import type { Cell, CellStyle, Sheet, Workbook } from '../package/model';
import { dress } from './dress';
import { POINTS_PER_CHARACTER } from './measures';
import { typedFormulaOf } from './writeCells';

/**
 * Writes a design workbook cell by cell, for an Excel that cannot insert sheets from a file. Values, formulas, looks,
 * widths and merged cells come over; lists to choose from, conditional colors and print setup do not.
 * @throws Error with a message for the person where a sheet's name is taken.
 */
export const writeDesignSheets = ({ sheets, styles }: Workbook): Promise<readonly string[]> =>
  Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load('items/name');
    await context.sync();
    const names = new Set(worksheets.items.map(({ name }) => name.toLowerCase()));
    // The formulas name the sheets, so the sheets cannot be named otherwise.
    const taken = sheets.find(({ name }) => names.has(name.toLowerCase()));
    if (taken)
      throw new Error(
        `There is a sheet "${taken.name}" already. Rename it, then insert the design sheet again.`,
      );
    const added = sheets.map(({ name }) => worksheets.add(name));
    sheets.forEach((sheet, i) => {
      const target = added[i];
      if (target) writeSheet(target, sheet, styles);
    });
    added[0]?.activate();
    await context.sync();
    return sheets.map(({ name }) => name);
  });

function writeSheet(target: Excel.Worksheet, sheet: Sheet, styles: readonly CellStyle[]): void {
  for (const { first, last, width } of sheet.columns) {
    if (width === undefined) continue;
    target.getRangeByIndexes(0, first, 1, last - first + 1).format.columnWidth = width * POINTS_PER_CHARACTER;
  }
  for (const { top, left, bottom, right } of sheet.merges) {
    target.getRangeByIndexes(top, left, bottom - top + 1, right - left + 1).merge(false);
  }
  for (const cell of sheet.cells) {
    const range = target.getRangeByIndexes(cell.row, cell.column, 1, 1);
    const style = styles[cell.style];
    if (style) dress(range, style, 1, 1);
    const content = contentOf(cell, sheet);
    if (content !== undefined) range.formulas = [[content]];
  }
}

/** What is typed into a cell; nothing where a formula elsewhere fills it, as a value there would block the spill. */
function contentOf(
  { row, column, value, formula }: Cell,
  { cells }: Sheet,
): string | number | boolean | undefined {
  if (formula !== undefined) return typedFormulaOf(formula);
  const filled = cells.some(
    ({ spill }) =>
      spill && row >= spill.top && row <= spill.bottom && column >= spill.left && column <= spill.right,
  );
  if (filled || value === null || typeof value === 'object') return undefined;
  // Excel would take `10-32` for a date and a formula that is shown as text for a formula.
  return typeof value === 'string' ? `'${value}` : value;
}
