import type { CellValue } from '../../call/cell';
import { CellError } from '../../call/cell';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { MAX_COLUMNS } from '../model';
import type { Cell, Sheet, Workbook } from '../model';
import { Calculator } from './calculator';
import { explain } from './explain';

/** A cell whose value is another one now. */
export interface Change {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly before: CellValue;
  readonly after: CellValue;
}

/** A cell in error; the error's message says why. */
export interface Trouble {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly error: CellError;
}

export interface Recalculation {
  /** The workbook with the new values and spills. */
  readonly workbook: Workbook;
  readonly changes: readonly Change[];
  readonly troubles: readonly Trouble[];
}

/** Calculates every formula of a workbook anew. */
export async function recalculate(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
): Promise<Recalculation> {
  const calculator = new Calculator(workbook, functions);
  try {
    await calculator.calculate();
    return readBack(workbook, calculator);
  } finally {
    calculator.dispose();
  }
}

/** What a calculator holds after a calculation, against the workbook that it was made from. */
export function readBack(workbook: Workbook, calculator: Calculator): Recalculation {
  const changes: Change[] = [];
  const troubles: Trouble[] = [];
  const sheets = workbook.sheets.map((sheet, index): Sheet => {
    const cells = recalculatedCells(sheet, index, calculator);
    for (const { before, after } of cells) {
      const place = { sheet: sheet.name, row: after.row, column: after.column };
      if (!same(before, after.value)) changes.push({ ...place, before, after: after.value });
      if (after.formula !== undefined && after.value instanceof CellError) {
        troubles.push({
          ...place,
          formula: after.formula,
          error: explain(after.value, after.formula, index, workbook, calculator),
        });
      }
    }
    return { ...sheet, cells: cells.map(({ after }) => after) };
  });
  return { workbook: { ...workbook, sheets }, changes, troubles };
}

interface Recalculated {
  readonly before: CellValue;
  readonly after: Cell;
}

/** The sheet's cells with new values; what spills grows over new cells and leaves old ones blank. */
function recalculatedCells(sheet: Sheet, index: number, calculator: Calculator): Recalculated[] {
  const places = new Map<number, Cell>();
  const touched = new Set<number>();
  const at = (row: number, column: number) => row * MAX_COLUMNS + column;
  for (const cell of sheet.cells) {
    places.set(at(cell.row, cell.column), cell);
    if (cell.formula === undefined) continue;
    touched.add(at(cell.row, cell.column));
    for (const area of [cell.spill, calculator.spill(index, cell.row, cell.column)]) {
      if (!area) continue;
      for (let row = area.top; row <= area.bottom; row++) {
        for (let column = area.left; column <= area.right; column++) touched.add(at(row, column));
      }
    }
  }
  for (const place of touched) {
    if (places.has(place)) continue;
    const row = Math.floor(place / MAX_COLUMNS);
    places.set(place, { row, column: place % MAX_COLUMNS, value: null, style: 0 });
  }
  return [...places]
    .sort(([a], [b]) => a - b)
    .map(([place, cell]) => ({
      before: cell.value,
      after: touched.has(place) ? recalculatedCell(cell, index, calculator) : cell,
    }));
}

function recalculatedCell(cell: Cell, index: number, calculator: Calculator): Cell {
  const value = calculator.value(index, cell.row, cell.column);
  if (cell.formula === undefined) return { ...cell, value };
  const { row, column, style, formula, fixedArray } = cell;
  const spill = calculator.spill(index, row, column);
  // A formula that refers to a blank cell shows 0.
  return {
    row,
    column,
    value: value ?? 0,
    formula,
    style,
    ...(fixedArray && { fixedArray }),
    ...(spill && { spill }),
  };
}

/** Files hold 15 to 17 digits: a difference in the last ones is no change. */
function same(before: CellValue, after: CellValue): boolean {
  if (before instanceof CellError || after instanceof CellError) {
    return before instanceof CellError && after instanceof CellError && before.code === after.code;
  }
  if (typeof before !== 'number' || typeof after !== 'number') return before === after;
  return Math.abs(before - after) <= 1e-14 * Math.max(Math.abs(before), Math.abs(after));
}
