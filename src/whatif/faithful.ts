import type { WorksheetFunction } from '../call/worksheetFunction';
import { CellError } from '../cells/value';
import { Book } from '../sheet/book';
import { contentOf } from '../workbook/content';
import { cellFinder, type Cell, type Workbook } from '../package/model';
import { agrees } from '../workbook/agrees';
import { between } from './between';
import type { CellRef } from './plan';

/**
 * True where a copy calculates what lies between the inputs and the results as the program that saved the workbook
 * does: it knows every function there, and comes to the values that the workbook holds.
 */
export function isFaithful(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  inputs: readonly CellRef[],
  results: readonly CellRef[],
): boolean {
  const part = between(workbook, inputs, results);
  const book = new Book(contentOf(part, true), functions);
  book.calculate();
  return part.sheets.every((sheet, index) => {
    const find = cellFinder(sheet);
    return sheet.cells.every((cell) =>
      placesOf(cell).every(([row, column]) => {
        const value = book.value(index, row, column);
        const isUnknown = value instanceof CellError && value.code === '#NAME?';
        return !isUnknown && agrees(value, find(row, column)?.value ?? null);
      }),
    );
  });
}

/** The cells that a formula fills. */
function placesOf({ formula, row, column, spill }: Cell): [number, number][] {
  if (formula === undefined) return [];
  const { top, left, bottom, right } = spill ?? { top: row, left: column, bottom: row, right: column };
  return Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (__, across): [number, number] => [top + down, left + across]),
  ).flat();
}
