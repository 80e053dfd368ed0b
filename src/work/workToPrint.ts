/** The shown work of chosen cells, for the pages behind a printed sheet. */
import { cellAddress, type Area } from '../cells/address';
import { inOwnSign } from '../cells/decimalSign';
import { numberText } from '../core/format';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { cellFinder, type Sheet } from '../package/model';
import { callsOurs } from '../package/spelling';
import { escapeHtml } from '../render/html';
import type { CalculatedWorkbook } from '../workbook/calculated';
import { rowLabel } from '../workbook/rowLabel';
import type { Range } from '../workbook/cells';
import { valueWords, workHtml, type Explained } from './workHtml';

/** Cells of one sheet. */
export interface Chosen {
  readonly sheet: Sheet;
  readonly area: Area;
}

/** One part for each cell with a formula of ours; empty where there is none. */
export async function workToPrint(
  book: CalculatedWorkbook,
  functions: readonly WorksheetFunction[],
  chosen: readonly Chosen[],
): Promise<string[]> {
  const desk = explained(book, functions);
  const parts: string[] = [];
  for (const { sheet, area } of chosen) {
    const cells = sheet.cells.filter(
      ({ row, column, formula }) =>
        row >= area.top &&
        row <= area.bottom &&
        column >= area.left &&
        column <= area.right &&
        formula !== undefined &&
        callsOurs(formula),
    );
    for (const { row, column } of cells) {
      const index = book.workbook.sheets.indexOf(sheet);
      const title = `${sheet.name}!${cellAddress(row, column)} ${rowLabel(book, sheet, row, column)}`.trim();
      const result = book.at(sheet, row, column);
      const value = typeof result === 'number' ? inOwnSign(numberText(result)) : valueWords(result);
      const work = await workHtml(desk, { sheet: index, row, column });
      parts.push(`<article><h2>${escapeHtml(title)}: ${escapeHtml(value)}</h2>${work}</article>`);
    }
  }
  return parts;
}

function explained(book: CalculatedWorkbook, functions: readonly WorksheetFunction[]): Explained {
  const { sheets } = book.workbook;
  const finders = new Map(sheets.map((sheet) => [sheet, cellFinder(sheet)]));
  const find = (sheet: Sheet | undefined, row: number, column: number) =>
    sheet && finders.get(sheet)?.(row, column);
  return {
    functions,
    sheet: (index) => sheets[index] as Sheet,
    original: ({ sheet, row, column }) => find(sheets[sheet], row, column),
    read: ({ sheet: name, row, column, rows, columns }: Range) => {
      const sheet = sheets.find((one) => one.name.toLowerCase() === name.toLowerCase());
      return Promise.resolve(
        Array.from({ length: rows }, (_, down) =>
          Array.from({ length: columns }, (__, across) => {
            const formula = find(sheet, row + down, column + across)?.formula;
            return {
              value: sheet ? book.at(sheet, row + down, column + across) : null,
              formula: formula === undefined ? '' : `=${formula}`,
            };
          }),
        ),
      );
    },
  };
}
