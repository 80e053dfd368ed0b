/** The typed cells that results rest on: while they are what they were, a what-if stands. */
import { areaContains } from '../../cells/address';
import type { Sheet, Workbook } from '../../package/model';
import type { Book, CellPlace } from '../../sheet/book';
import { isSameName, type CellRef } from '../plan';

/** More is no list that anybody reads; the results alone are compared then. */
export const MOST_LEAVES = 120;
const MOST_FORMULAS = 20_000;

/** Undefined where there are too many, or a formula on the way does not say what it reads. */
export function leavesOf(
  workbook: Workbook,
  book: Book,
  results: readonly CellRef[],
  vary: readonly CellRef[],
): CellPlace[] | undefined {
  const place = ({ sheet, row, column }: CellRef): CellPlace => ({
    sheet: workbook.sheets.findIndex(({ name }) => isSameName(name, sheet)),
    row,
    column,
  });
  const key = ({ sheet, row, column }: CellPlace): string => `${sheet} ${row} ${column}`;
  const varied = new Set(vary.map((one) => key(place(one))));
  const seen = new Set<string>();
  const leaves = new Map<string, CellPlace>();
  const open = results.map(place);
  for (let next = open.pop(); next; next = open.pop()) {
    const formula = book.formulaAt(next);
    const at = formula ?? next;
    if (varied.has(key(next)) || varied.has(key(at)) || seen.has(key(at))) continue;
    seen.add(key(at));
    if (!formula) {
      leaves.set(key(at), at);
      if (leaves.size > MOST_LEAVES) return undefined;
      continue;
    }
    if (seen.size > MOST_FORMULAS || book.isVolatile(at)) return undefined;
    for (const area of book.reads(at)) {
      const sheet = workbook.sheets[area.sheet];
      const isOne = area.top === area.bottom && area.left === area.right;
      if (isOne) open.push({ sheet: area.sheet, row: area.top, column: area.left });
      else if (sheet) open.push(...filled(sheet, area.sheet, area));
    }
  }
  return [...leaves.values()].sort((a, b) => a.sheet - b.sheet || a.row - b.row || a.column - b.column);
}

const filled = (sheet: Sheet, index: number, area: Parameters<typeof areaContains>[0]): CellPlace[] =>
  sheet.cells
    .filter(
      ({ row, column, value, formula }) =>
        (value !== null || formula !== undefined) && areaContains(area, row, column),
    )
    .map(({ row, column }) => ({ sheet: index, row, column }));
