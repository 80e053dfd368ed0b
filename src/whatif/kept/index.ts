/** What-ifs that stay in a workbook: written as a sheet, and run again when the design has changed. */
import type { CellValue } from '../../cells/value';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { Refusal } from '../../core/refusal';
import { readWorkbook, saveWorkbook } from '../../package';
import { addCharts, addSheets } from '../../package/author';
import type { CellChange } from '../../package/changes';
import { cellFinder, type Workbook } from '../../package/model';
import { freeSheetName } from '../../package/sheetNames';
import type { CellInput } from '../../workbook/cells';
import { WorkbookCopy } from '../copy';
import type { Plan } from '../plan';
import { runWhatIf, type Outcome, type RunOptions, type TrialCells } from '../run';
import { lineChanges, madeLines, RUN_AGAIN, SPARE_LINES } from './made';
import { MOST_LEAVES } from './leaves';
import { freeNumber, keptWhatIfs, type KeptWhatIf } from './record';
import { keptSheet, madePlace, resultContents, type KeptSheet } from './sheet';

export { keptWhatIfs, type KeptWhatIf };

const SHEET = 'What if';
const MOST_LINES = MOST_LEAVES + SPARE_LINES;

/** The outcome as a sheet of its own that the workbook has not yet: a plan, for the writer of files and that of Excel. */
export async function planKept(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  outcome: Outcome,
): Promise<KeptSheet> {
  const cells = {
    vary: outcome.inputs.map(({ cell }) => cell),
    read: outcome.results.map(({ cell }) => cell),
  };
  const sheet = freeSheetName(
    SHEET,
    workbook.sheets.map(({ name }) => name),
  );
  const lines = await madeLines(workbook, functions, cells, madePlace(outcome), MOST_LINES);
  return keptSheet(sheet, freeNumber(workbook), outcome, lines);
}

/** The workbook with the outcome on a sheet of its own, behind the others; calculate it before it is given away. */
export async function keepWhatIf(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  outcome: Outcome,
): Promise<{ readonly workbook: Workbook; readonly sheet: string }> {
  const { description, charts, record } = await planKept(workbook, functions, outcome);
  const { sheet } = record.made;
  return { workbook: addCharts(addSheets(workbook, description), sheet, charts), sheet };
}

/**
 * Runs one of the what-ifs of a calculated workbook again with the values that stand in its tables now; gives what changes
 * on its sheet. Undefined where it was stopped before its end: half a table would be worse than an old one. Values are
 * tried in a copy unless other cells are given.
 */
export async function runAgain(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  kept: KeptWhatIf,
  options: RunOptions = {},
  cells?: TrialCells,
): Promise<{ readonly changes: readonly CellChange[]; readonly outcome: Outcome } | undefined> {
  const copy = new WorkbookCopy(workbook, functions);
  try {
    const outcome = await runWhatIf(cells ?? copy, planOf(workbook, kept), options);
    if (outcome.rows.length < outcome.planned) return undefined;
    const { area } = kept.made;
    const first = { row: area.top, column: area.left };
    const lines = await madeLines(workbook, functions, kept, first, area.bottom - area.top + 1);
    return {
      changes: [...resultChanges(kept, outcome), ...lineChanges(kept.made.sheet, kept.made.area, lines)],
      outcome,
    };
  } finally {
    copy.dispose();
  }
}

/** The workbook with changes of cells; calculate it before it is given away. */
export const changed = (
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  changes: readonly CellChange[],
): Workbook =>
  readWorkbook(
    saveWorkbook(workbook, changes),
    functions.map(({ id }) => id),
  );

/** Which of the what-ifs of a calculated workbook say themselves that they were made for other values. */
export const outOfDate = (workbook: Workbook): readonly KeptWhatIf[] =>
  keptWhatIfs(workbook).filter(({ made }) =>
    workbook.sheets
      .find(({ name }) => name === made.sheet)
      ?.cells.some(({ formula, value }) => formula !== undefined && value === RUN_AGAIN),
  );

/** The values that stand in the tables now. */
export function planOf(workbook: Workbook, { vary, read, tables }: KeptWhatIf): Plan {
  const [table] = tables;
  const sheet = workbook.sheets.find(({ name }) => name === table?.sheet);
  if (!table || !sheet) throw new Refusal('The table of the what-if is gone.');
  const find = cellFinder(sheet);
  const { top, left, bottom, right } = table.area;
  const value = (row: number, column: number): CellInput => {
    const found = find(row, column)?.value ?? null;
    return typeof found === 'object' ? null : found;
  };
  const down = (from: number): CellInput[] =>
    Array.from({ length: bottom - from + 1 }, (_, at) => value(from + at, left));
  const values =
    vary.length === 1
      ? [down(top)]
      : [down(top + 1), Array.from({ length: right - left }, (_, at) => value(top, left + 1 + at))];
  return {
    vary: vary.map((cell, at) => ({ cell, values: values[at] ?? [] })),
    results: read,
    overFormulas: true,
  };
}

function resultChanges({ tables, vary }: KeptWhatIf, outcome: Outcome): CellChange[] {
  const { rows, inputs } = outcome;
  const contents = resultContents(outcome);
  const content = (value: CellValue, at: number): CellValue => contents[at]?.(value) ?? null;
  const [first] = tables;
  if (vary.length === 1 && first) {
    const { sheet, area } = first;
    return rows.flatMap(({ results }, down) =>
      results.map((value, at) => ({
        sheet,
        row: area.top + down,
        column: area.left + 1 + at,
        value: content(value, at),
      })),
    );
  }
  const across = inputs[1]?.values.length ?? 1;
  // The values of the first matrix count for all.
  return tables.flatMap(({ sheet, area }, at) =>
    rows.flatMap(({ inputs: tried, results }, index) => {
      const row = area.top + 1 + Math.floor(index / across);
      const column = area.left + 1 + (index % across);
      return [
        { sheet, row, column, value: content(results[at] ?? null, at) },
        { sheet, row, column: area.left, value: tried[0] ?? null },
        { sheet, row: area.top, column, value: tried[1] ?? null },
      ];
    }),
  );
}
