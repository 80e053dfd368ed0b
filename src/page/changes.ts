import type { CellValue, Matrix } from '../cells/value';
import { CellError } from '../cells/value';
import { cellFinder } from '../package/model';
import type { Area } from '../cells/address';
import type { Cell, Sheet, Workbook } from '../package/model';
import type { CellChange } from '../package/changes';
import type { GridCell } from './gridCells';

/** A sheet as it stands now, for comparing with the one that was opened. */
export interface SheetNow {
  read(row: number, column: number): GridCell;
  /** Places that hold a value, a formula or a style of their own, or part of a spill. */
  places(): { row: number; column: number }[];
}

interface Options {
  /** Formulas that a calculation has not reached keep the value that the workbook was opened with. */
  readonly keepsUnreached?: boolean;
}

/** What has to be written into the file so that it says what the grid says. */
export function changesOf(
  workbook: Workbook,
  now: (index: number) => SheetNow | undefined,
  options: Options = {},
): CellChange[] {
  return workbook.sheets.flatMap((sheet, index) => {
    const current = now(index);
    return current ? sheetChanges(sheet, current, options) : [];
  });
}

function sheetChanges(sheet: Sheet, now: SheetNow, { keepsUnreached = false }: Options): CellChange[] {
  const before = cellFinder(sheet);
  const changes: CellChange[] = [];
  const filled = new Set<string>();
  const current = now.places().map(({ row, column }) => ({ row, column, ...now.read(row, column) }));
  const inSpill = covered(current.flatMap(({ spill }) => (spill ? [spill] : [])));
  for (const { row, column, ...read } of current) {
    filled.add(`${row} ${column}`);
    const old = before(row, column);
    const isLeft = keepsUnreached && read.isUnreached && old && old.formula === read.formula;
    const cell = isLeft ? { ...read, value: old.value } : read;
    const style = newStyle(old, cell);
    // What an array fills it writes itself.
    const same = (cell.formula === undefined && inSpill(row, column)) || sameContent(old, cell);
    if (style === undefined && same) continue;
    changes.push({
      sheet: sheet.name,
      row,
      column,
      value: cell.value,
      ...(cell.formula !== undefined && { formula: cell.formula }),
      ...(cell.spill && { spill: values(cell.spill, now) }),
      ...(style !== undefined && { style }),
    });
  }
  const spilled = covered(sheet.cells.flatMap(({ spill }) => (spill ? [spill] : [])));
  for (const { row, column, value, formula } of sheet.cells) {
    const held = formula !== undefined || (value !== null && !spilled(row, column));
    if (held && !filled.has(`${row} ${column}`))
      changes.push({ sheet: sheet.name, row, column, value: null });
  }
  return changes;
}

function covered(areas: readonly Area[]): (row: number, column: number) => boolean {
  const places = new Set<string>();
  for (const { top, left, bottom, right } of areas) {
    for (let row = top; row <= bottom; row++) {
      for (let column = left; column <= right; column++) places.add(`${row} ${column}`);
    }
  }
  return (row, column) => places.has(`${row} ${column}`);
}

/** The style that the cell has not had before; undefined where it is the same. */
function newStyle(old: Cell | undefined, { style }: GridCell): GridCell['style'] {
  if (style === undefined) return old === undefined || old.style === 0 ? undefined : 0;
  return style === old?.style ? undefined : style;
}

/** A spill is written again whenever it may have changed: its values stand in cells of their own in the file. */
function sameContent(old: Cell | undefined, cell: GridCell): boolean {
  if (!old) return cell.formula === undefined && cell.value === null;
  if (cell.isUnreached && old.formula === cell.formula && old.spill) return sameValue(old.value, cell.value);
  return old.formula === cell.formula && !cell.spill && !old.spill && sameValue(old.value, cell.value);
}

function sameValue(a: CellValue, b: CellValue): boolean {
  if (a instanceof CellError || b instanceof CellError) {
    return a instanceof CellError && b instanceof CellError && a.code === b.code;
  }
  return a === b;
}

function values({ top, left, bottom, right }: Area, now: SheetNow): Matrix {
  return Array.from({ length: bottom - top + 1 }, (_, row) =>
    Array.from({ length: right - left + 1 }, (_, column) => now.read(top + row, left + column).value),
  );
}
