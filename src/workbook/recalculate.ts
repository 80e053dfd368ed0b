import { MAX_COLUMNS, type Area } from '../cells/address';
import { CellError, type CellValue, type Matrix } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import type { CellChange } from '../package/changes';
import { cellFinder, type Cell, type Workbook } from '../package/model';
import { Book, type CellPlace } from '../sheet/book';
import type { Limits } from '../sheet/budget';
import { basisReasons } from './basis';
import { contentOf } from './content';

/** A formula calculated anew, in the form that saving takes. An error in it says why. */
export interface FormulaResult extends CellChange {
  readonly formula: string;
  /** What the workbook held until now. */
  readonly before: CellValue;
  /** Whether the value, or any of those that spill, is another one now. */
  readonly changed: boolean;
  /** Why the stored value stands though it was not calculated; then nothing changed. */
  readonly kept?: string;
  /** Where the value is another one since a function of ours answers otherwise: which, and why. */
  readonly because: readonly string[];
}

export interface RecalculateOptions extends Limits {
  /** No stored value counts: what cannot be calculated is in error. Otherwise such a formula keeps its value. */
  readonly anew?: boolean;
}

/**
 * Calculates every formula of a workbook anew, sheet by sheet in the order of their cells. Rejects with `Stopped` where
 * the limits end it.
 */
export function recalculate(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  { anew = false, ...limits }: RecalculateOptions = {},
): Promise<FormulaResult[]> {
  return new Promise((resolve) => {
    const book = new Book(contentOf(workbook, anew), functions);
    book.calculate(limits);
    const results = workbook.sheets.map((_, sheet) => sheetResults(book, workbook, sheet));
    const changed = results.map((ofSheet) => new Set(ofSheet.filter(wasStored).map(placeKey)));
    const reasons = basisReasons(
      workbook,
      book,
      functions,
      (place) => changed[place.sheet]?.has(placeKey(place)) ?? false,
    );
    resolve(
      results.flatMap((ofSheet, sheet) =>
        ofSheet.map((one) => ({ ...one, because: wasStored(one) ? reasons({ ...one, sheet }) : [] })),
      ),
    );
  });
}

/** A result that the file held is another one now; one that it did not hold has no reason. */
const wasStored = ({ changed, before }: Omit<FormulaResult, 'because'>): boolean =>
  changed && before !== null;

const placeKey = ({ row, column }: Pick<CellPlace, 'row' | 'column'>): number => row * MAX_COLUMNS + column;

function sheetResults(book: Book, workbook: Workbook, index: number): Omit<FormulaResult, 'because'>[] {
  const sheet = workbook.sheets[index];
  if (!sheet) return [];
  const stored = cellFinder(sheet);
  return sheet.cells.flatMap((cell) => {
    const { row, column, formula, value: before } = cell;
    if (formula === undefined) return [];
    const value = book.value(index, row, column);
    const kept = book.keptReason(index, row, column);
    const area = book.spill(index, row, column);
    const spill = area && read(area, (r, c) => book.value(index, r, c));
    const changed =
      kept === undefined &&
      (!same(before, value) ||
        !sameArea(cell.spill, area) ||
        (area !== undefined &&
          !sameValues(
            read(area, (r, c) => stored(r, c)?.value ?? null),
            spill ?? [],
          )));
    return [
      {
        sheet: sheet.name,
        row,
        column,
        formula,
        before,
        value,
        changed,
        ...(spill && { spill }),
        ...(kept !== undefined && { kept }),
      },
    ];
  });
}

function read(area: Area, value: (row: number, column: number) => CellValue): Matrix {
  return Array.from({ length: area.bottom - area.top + 1 }, (_, row) =>
    Array.from({ length: area.right - area.left + 1 }, (_, column) =>
      value(area.top + row, area.left + column),
    ),
  );
}

function sameArea(stored: Cell['spill'], now: Area | undefined): boolean {
  const size = (area: Area | undefined) => [area?.bottom, area?.right].join();
  const isSingle = (area: Area | undefined) =>
    !area || (area.top === area.bottom && area.left === area.right);
  // A result of one cell may be stored as an area of one.
  return isSingle(stored) ? isSingle(now) : size(stored) === size(now);
}

function sameValues(before: Matrix, after: Matrix): boolean {
  return before.every((line, row) =>
    line.every((value, column) => same(value, after[row]?.[column] ?? null)),
  );
}

/** Files hold 15 to 17 digits: a difference in the last ones is no change. */
function same(before: CellValue, after: CellValue): boolean {
  if (before instanceof CellError || after instanceof CellError) {
    return before instanceof CellError && after instanceof CellError && before.code === after.code;
  }
  if (typeof before !== 'number' || typeof after !== 'number') return before === after;
  return Math.abs(before - after) <= 1e-14 * Math.max(Math.abs(before), Math.abs(after));
}
