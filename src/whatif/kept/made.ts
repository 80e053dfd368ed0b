/** The list beside a what-if that says what it was made for, as formulas that compare: it tells when to run it again. */
import { CellError, type CellValue } from '../../cells/value';
import { cellAddress, type Area } from '../../cells/address';
import { referenceText } from '../../cells/reference';
import type { CellChange } from '../../package/changes';
import type { Workbook } from '../../package/model';
import { Book } from '../../sheet/book';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { contentOf } from '../../workbook/content';
import type { Limits } from '../../sheet/budget';
import { WorkbookCopy } from '../copy';
import { headingOf } from '../heading';
import { isSameName, type CellRef } from '../plan';
import { leavesOf } from './leaves';
import { CHANGED } from './record';

/** A line of the list: what stands in its four cells. */
export interface MadeLine {
  readonly label: string;
  readonly then: string | number | boolean;
  readonly now: string;
  readonly changed: string | undefined;
}

export const STANDS = 'Made for the design as it stands.';
export const RUN_AGAIN = 'Made for other values: run again.';
const BLANK = 'blank';
/** Programs differ in the last digits of a calculation. */
const SAME = '1E-9';
/** Lines kept free for inputs that a design gains later. */
export const SPARE_LINES = 20;

/** The lines for a workbook that is calculated, from the row given on, in four columns from the one given. */
export async function madeLines(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  { vary, read }: { readonly vary: readonly CellRef[]; readonly read: readonly CellRef[] },
  first: { readonly row: number; readonly column: number },
  most: number,
  limits?: Limits,
): Promise<MadeLine[]> {
  const book = new Book(contentOf(workbook), functions);
  book.calculate(limits);
  const cells = new WorkbookCopy(workbook, functions, limits);
  const label = async (cell: CellRef): Promise<string> => (await headingOf(cells, cell)).label;
  const index = (sheet: string): number => workbook.sheets.findIndex(({ name }) => isSameName(name, sheet));
  const valueOf = ({ sheet, row, column }: CellRef): CellValue => book.value(index(sheet), row, column);
  const typed = (leavesOf(workbook, book, read, vary) ?? []).map(({ sheet, row, column }): CellRef => ({
    sheet: workbook.sheets[sheet]?.name ?? '',
    row,
    column,
  }));
  // Too many for the list: what the results were then still tells most changes.
  const inputs = typed.length + vary.length + read.length > most ? [] : typed;
  const lines: MadeLine[] = [];
  const add = async (
    cell: CellRef,
    now: string,
    changed: ((then: string, now: string) => string) | undefined,
  ) => {
    const row = first.row + lines.length;
    const [then, present] = [cellAddress(row, first.column + 1), cellAddress(row, first.column + 2)];
    lines.push({
      label: await label(cell),
      then: kept(valueOf(cell)),
      now,
      changed: changed?.(then, present),
    });
  };
  for (const cell of inputs) {
    await add(cell, nowOf(cell), (then, now) => `IF(${then}=${now},"","${CHANGED}")`);
  }
  const variedAt = first.row + lines.length;
  for (const cell of vary) await add(cell, nowOf(cell), undefined);
  const sameInputs = vary.map((_, at) => {
    const row = variedAt + at;
    return `${cellAddress(row, first.column + 1)}=${cellAddress(row, first.column + 2)}`;
  });
  // The table holds the results of other inputs too, so that the present ones tell of a change only at the input of then.
  for (const cell of read.slice(0, Math.max(0, most - lines.length))) {
    const result = `IFERROR(${referenceText(asReference(cell))},"error")`;
    await add(cell, result, (then, now) => {
      const differs = `IF(ISNUMBER(${then}),IF(ISNUMBER(${now}),ABS(${now}-${then})>${SAME}*ABS(${then}),TRUE),${then}<>${now})`;
      return `IF(AND(${sameInputs.join(',')}),IF(${differs},"${CHANGED}",""),"")`;
    });
  }
  cells.dispose();
  return lines;
}

/** Whether anything in the list has changed, in words. */
export const standsFormula = (made: Area): string => {
  const column = made.left + 3;
  const area = `${cellAddress(made.top, column)}:${cellAddress(made.bottom, column)}`;
  return `IF(COUNTIF(${area},"${CHANGED}")=0,"${STANDS}","${RUN_AGAIN}")`;
};

const asReference = ({ sheet, row, column }: CellRef) => ({
  sheet,
  area: { top: row, left: column, bottom: row, right: column },
});

function nowOf(cell: CellRef): string {
  const text = referenceText(asReference(cell));
  return `IF(ISBLANK(${text}),"${BLANK}",${text})`;
}

const kept = (value: CellValue): string | number | boolean =>
  value === null ? BLANK : value instanceof CellError ? 'error' : value;

/** What the list holds now, in an area for it; lines that are no more become blank. */
export function lineChanges(
  sheet: string,
  { top, left, bottom }: Area,
  lines: readonly MadeLine[],
): CellChange[] {
  return Array.from({ length: bottom - top + 1 }, (_, down) => {
    const line = lines[down];
    const at = (column: number) => ({ sheet, row: top + down, column: left + column, value: null });
    return [
      { ...at(0), value: line?.label ?? null },
      { ...at(1), value: line?.then ?? null },
      { ...at(2), ...(line && { formula: line.now }) },
      { ...at(3), ...(line?.changed !== undefined && { formula: line.changed }) },
    ];
  }).flat();
}
