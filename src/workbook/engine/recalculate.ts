import type { CellValue, Matrix } from '../../cells/value';
import { CellError } from '../../cells/value';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { cellFinder } from '../../package/model';
import type { Area } from '../../cells/address';
import type { Cell, Workbook } from '../../package/model';
import type { CellChange } from '../../package/changes';
import { Calculator } from './calculator';
import { explain } from './explain';
import type { Context } from './explain';

/** A formula calculated anew, in the form that saving takes. An error in it says why. */
export interface FormulaResult extends CellChange {
  readonly formula: string;
  /** What the workbook held until now. */
  readonly before: CellValue;
  /** Whether the value, or any of those that spill, is another one now. */
  readonly changed: boolean;
}

/** Calculates every formula of a workbook anew, sheet by sheet in the order of their cells. */
export async function recalculate(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
): Promise<FormulaResult[]> {
  const calculator = new Calculator(workbook, functions);
  try {
    await calculator.calculate();
    return workbook.sheets.flatMap((_, sheet) => sheetResults({ calculator, functions, workbook, sheet }));
  } finally {
    calculator.dispose();
  }
}

function sheetResults(context: Required<Context>): FormulaResult[] {
  const { calculator, workbook, sheet: index } = context;
  const sheet = workbook.sheets[index];
  if (!sheet) return [];
  const stored = cellFinder(sheet);
  return sheet.cells.flatMap((cell) => {
    const { row, column, formula, value: before } = cell;
    if (formula === undefined) return [];
    // A formula that refers to a blank cell shows 0.
    const found = calculator.value(index, row, column) ?? 0;
    const value = found instanceof CellError ? explain(found, formula, context) : found;
    const area = calculator.spill(index, row, column);
    const spill = area && read(area, (r, c) => calculator.value(index, r, c));
    const changed =
      !same(before, value) ||
      !sameArea(cell.spill, area) ||
      (area !== undefined &&
        !sameValues(
          read(area, (r, c) => stored(r, c)?.value ?? null),
          spill ?? [],
        ));
    return [{ sheet: sheet.name, row, column, formula, before, value, changed, ...(spill && { spill }) }];
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
  // A result of one cell may be stored as an area of one.
  const single = !stored || (stored.top === stored.bottom && stored.left === stored.right);
  return single ? now === undefined : size(stored) === size(now);
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
