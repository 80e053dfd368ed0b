/** Writes a plan into a workbook's file: the page and the command line both do it here. */
import { areaAddress, areaContains, cellAddress } from '../cells/address';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { addToSheet } from '../package/addToSheet';
import type { CellChange } from '../package/changes';
import type { ConditionDescription, SheetDescription, ValidationDescription } from '../package/description';
import type { ColumnRun, Sheet, Workbook } from '../package/model';
import { knownFunctions } from '../package/spelling';
import { recalculate } from '../workbook/recalculate';
import { absoluteArea } from './groundOf';
import type { FormPlan, PlannedCell, PlannedList, PlannedRule } from './plan';
import { quotedSheet } from './rows';
import { SCALE } from './scale';

/** The workbook with the form in it, calculated; all else keeps the values that it has. */
export async function writeForm(
  workbook: Workbook,
  plan: FormPlan,
  functions: readonly WorksheetFunction[],
): Promise<Workbook> {
  return writePlans(workbook, [plan], functions);
}

/** The same with several plans, which may refer to one another. */
export async function writePlans(
  workbook: Workbook,
  plans: readonly FormPlan[],
  functions: readonly WorksheetFunction[],
): Promise<Workbook> {
  const known = knownFunctions(functions.map(({ id }) => id));
  const written = plans.reduce((before, plan) => {
    const sheet = before.sheets.find(({ name }) => name === plan.sheet);
    if (!sheet) throw new Error(`The workbook has no sheet "${plan.sheet}"`);
    return addToSheet(before, additionOf(plan, sheet, before), known);
  }, workbook);
  const results = (await recalculate(written, functions)).filter((one) =>
    plans.some(({ sheet, area }) => one.sheet === sheet && areaContains(area, one.row, one.column)),
  );
  const [first] = plans;
  return first ? addToSheet(written, { sheet: first.sheet, changes: results }, known) : written;
}

function additionOf(plan: FormPlan, sheet: Sheet, workbook: Workbook) {
  const { lists, names, rules, verdicts } = plan;
  const isThere = (list: PlannedList) => workbook.sheets.some(({ name }) => name === list.sheet);
  return {
    sheet: plan.sheet,
    changes: [
      ...plan.cells.map((cell) => changeOf(plan.sheet, cell)),
      ...lists.filter(isThere).flatMap(listChanges),
    ],
    layout: layoutOf(plan, sheet),
    validations: rules.map(validationOf),
    conditions: verdicts.flatMap((area): ConditionDescription[] =>
      SCALE.map(([word, style]) => ({
        cells: areaAddress(area),
        when: `${absoluteArea({ ...area, bottom: area.top, right: area.left })}="${word}"`,
        style,
      })),
    ),
    names: Object.fromEntries(
      names.map(({ name, area }) => [name, `${quotedSheet(plan.sheet)}!${absoluteArea(area)}`]),
    ),
    newSheets: newListSheets(lists.filter((list) => !isThere(list))),
  };
}

const changeOf = (sheet: string, { row, column, value, formula, look }: PlannedCell): CellChange => ({
  sheet,
  row,
  column,
  value: value ?? null,
  ...(formula !== undefined && { formula }),
  style: look,
});

/** Lists are texts, whatever they look like. */
const LIST_LOOK = { numberFormat: '@' } as const;

const listChanges = ({ sheet, column, title, words }: PlannedList): CellChange[] =>
  [title, ...words].map((value, row) => ({ sheet, row, column, value, style: LIST_LOOK }));

function newListSheets(lists: readonly PlannedList[]): SheetDescription[] {
  const [first] = lists;
  if (!first) return [];
  const cells = Object.fromEntries(
    lists.flatMap(({ column, title, words }) =>
      [title, ...words].map((value, row) => [cellAddress(row, column), { value }] as const),
    ),
  );
  return [{ name: first.sheet, columns: { 'A:Z': 24 }, cells, freeze: 'A2' }];
}

const validationOf = ({ row, column, takes, strict, title, text }: PlannedRule): ValidationDescription => ({
  cells: cellAddress(row, column),
  ...('accepts' in takes ? takes : { choices: 'words' in takes ? takes.words : takes.cells }),
  refusal: { style: strict ? 'stop' : 'warning', title, text },
});

function layoutOf({ merges, heights, widths }: FormPlan, sheet: Sheet) {
  const present = new Map(sheet.rows.map((row) => [row.row, row]));
  return {
    merges: [...sheet.merges, ...merges],
    rows: heights.map(({ row, points }) => ({
      row,
      hidden: present.get(row)?.hidden ?? false,
      height: Math.max(points, present.get(row)?.height ?? 0),
    })),
    ...(widths.length > 0 && { columns: widened(sheet.columns, widths) }),
  };
}

/** The runs of columns with other widths for some. */
function widened(runs: readonly ColumnRun[], widths: FormPlan['widths']): ColumnRun[] {
  const wanted = new Map(widths.map(({ column, characters }) => [column, characters]));
  const single = (column: number): ColumnRun => {
    const run = runs.find(({ first, last }) => column >= first && column <= last);
    const width = wanted.get(column) ?? 0;
    return { hidden: false, style: 0, ...run, first: column, last: column, width };
  };
  const kept = [...wanted.keys()].reduce<ColumnRun[]>(
    (all, column) =>
      all.flatMap((run) =>
        column < run.first || column > run.last
          ? [run]
          : [
              ...(column > run.first ? [{ ...run, last: column - 1 }] : []),
              ...(column < run.last ? [{ ...run, first: column + 1 }] : []),
            ],
      ),
    [...runs],
  );
  return [...kept, ...[...wanted.keys()].map(single)].sort((a, b) => a.first - b.first);
}
