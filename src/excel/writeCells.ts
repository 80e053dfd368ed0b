/// <reference types="office-js" />
import type { Area } from '../cells/address';
import type { CellValue } from '../cells/value';
import type { StyleDescription } from '../package/description';
import { dress } from './dress';
import { lookAreas } from './lookAreas';

export interface WrittenCell {
  readonly row: number;
  readonly column: number;
  readonly value?: CellValue;
  /** In our spelling, without leading `=`. */
  readonly formula?: string;
  readonly look?: StyleDescription;
}

export const rangeOf = (sheet: Excel.Worksheet, { top, left, bottom, right }: Area): Excel.Range =>
  sheet.getRangeByIndexes(top, left, bottom - top + 1, right - left + 1);

/** Before they are filled: the format decides whether Excel takes what is typed for a text, a number or a day. */
export function dressCells(sheet: Excel.Worksheet, cells: readonly WrittenCell[]): void {
  const dressed = cells.flatMap((cell) => (cell.look ? [{ ...cell, look: cell.look }] : []));
  for (const { area, look } of lookAreas(dressed))
    dress(rangeOf(sheet, area), look, area.bottom - area.top + 1, area.right - area.left + 1);
}

/** Rows that go to Excel at once: it refuses a request of more than 5 MB (OfficeDev/office-js #4654). */
const ROWS = 1000;

/** Fills cells with what they hold, whole; one with neither value nor formula is emptied where it has no look. */
export async function fillCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  cells: readonly WrittenCell[],
): Promise<void> {
  const pieces = new Map<number, WrittenCell[]>();
  for (const cell of cells) {
    const at = Math.floor(cell.row / ROWS);
    const piece = pieces.get(at);
    if (piece) piece.push(cell);
    else pieces.set(at, [cell]);
  }
  for (const piece of pieces.values()) {
    fillPiece(sheet, piece);
    if (pieces.size > 1) await context.sync();
  }
}

/** All at once: Excel leaves alone where null stands. */
function fillPiece(sheet: Excel.Worksheet, cells: readonly WrittenCell[]): void {
  const area = areaOf(cells);
  const { top, left, bottom, right } = area;
  const contents = Array.from({ length: bottom - top + 1 }, () =>
    Array<string | number | boolean | null>(right - left + 1).fill(null),
  );
  for (const cell of cells) {
    const line = contents[cell.row - top];
    if (line) line[cell.column - left] = contentOf(cell);
  }
  rangeOf(sheet, area).formulas = contents;
}

const areaOf = (cells: readonly WrittenCell[]): Area =>
  cells.reduce(
    (area, { row, column }) => ({
      top: Math.min(area.top, row),
      left: Math.min(area.left, column),
      bottom: Math.max(area.bottom, row),
      right: Math.max(area.right, column),
    }),
    { top: Infinity, left: Infinity, bottom: 0, right: 0 },
  );

function contentOf({ value = null, formula, look }: WrittenCell): string | number | boolean | null {
  if (formula !== undefined) return typedFormulaOf(formula);
  if (value === null) return look ? null : '';
  // Excel would take `10-32` for a date, and a text that begins with `=` for a formula.
  if (typeof value === 'string') return look?.numberFormat === '@' ? value : `'${value}`;
  return typeof value === 'object' ? value.code : value;
}

/** A formula of a file, with its `=`, as a person would type it. */
export const typedFormulaOf = (formula: string): string =>
  `=${formula.replace(/\bANCHORARRAY\(([^()]+)\)/g, '$1#')}`;
