/// <reference types="office-js" />
import { areaAddress, type Area } from '../cells/address';
import { absoluteArea } from '../forms/groundOf';
import { sheetOf, type DesignPlans, type FormPlan, type PlannedList, type PlannedRule } from '../forms/plan';
import { SCALE } from '../forms/scale';
import { POINTS_PER_CHARACTER } from './measures';
import { canUndo, inOneStep } from './undoStep';
import { dressCells, fillCells, rangeOf } from './writeCells';
import { addSheet, setUpPages } from './writeSheets';

/**
 * Writes plans into the open workbook, on new sheets and on sheets that it has. All that changes it goes in one batch: one
 * step to undo, and where Excel refuses a part of it, the message says what. Gives what is to be said of pages that could
 * not be set up for printing, which some Excel without a printer refuse.
 */
export const writePlans = ({ sheets, plans }: DesignPlans): Promise<string> =>
  inOneStep(async (context) => {
    const { workbook } = context;
    const isNew = new Set(sheets.map(({ name }) => name));
    const present = plans
      .filter(({ sheet }) => !isNew.has(sheet))
      .map((plan) => ({ plan, rows: readHeights(workbook.worksheets.getItem(plan.sheet), plan) }));
    workbook.worksheets.load('items/name');
    await context.sync();

    const described = sheets.map(sheetOf);
    for (const sheet of described) addSheet(workbook, sheet);
    for (const plan of plans) {
      const target = workbook.worksheets.getItem(plan.sheet);
      const known = present.find((one) => one.plan === plan);
      // Blank cells may have a look: in cells of text Excel would take a formula for a text.
      if (known) rangeOf(target, plan.area).clear('Formats');
      await writePlan(context, target, plan);
      if (known) {
        for (const { format, points } of known.rows) if (format.rowHeight < points) format.rowHeight = points;
      } else setHeights(target, plan);
    }
    const [first] = plans;
    if (first) {
      const target = workbook.worksheets.getItem(first.sheet);
      target.activate();
      target.getRangeByIndexes(first.area.top, first.area.left, 1, 1).select();
    }
    await context.sync();
    return setUpPages(context, described);
  });

function readHeights(sheet: Excel.Worksheet, { heights }: FormPlan) {
  return heights.map(({ row, points }) => {
    const { format } = sheet.getRangeByIndexes(row, 0, 1, 1);
    format.load('rowHeight');
    return { format, points };
  });
}

/** Rows of one height that follow one another, at once. */
function setHeights(sheet: Excel.Worksheet, { heights }: FormPlan): void {
  for (let from = 0, to = 0; from < heights.length; from = to) {
    const first = heights[from];
    if (!first) return;
    for (to = from + 1; heights[to]?.points === first.points && heights[to]?.row === first.row + to - from;)
      to++;
    sheet.getRangeByIndexes(first.row, 0, to - from, 1).format.rowHeight = first.points;
  }
}

async function writePlan(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  plan: FormPlan,
): Promise<void> {
  const { workbook } = context;
  // A cell is joined with others before it is filled: joining forgets what stands in the others.
  for (const area of plan.merges) rangeOf(sheet, area).merge(false);
  dressCells(sheet, plan.cells);
  // Before the formulas that use them: a formula with a name that is not there shows #NAME? until it is entered again.
  for (const { name, area } of plan.names) workbook.names.add(name, rangeOf(sheet, area));
  await fillCells(context, sheet, plan.cells);
  for (const { column, characters } of plan.widths)
    sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = characters * POINTS_PER_CHARACTER;
  writeLists(workbook, plan.lists);
  for (const rule of plan.rules) writeRule(sheet, rule);
  for (const area of plan.verdicts) colorVerdict(rangeOf(sheet, area), area);
}

/** Long lists stand on a sheet of their own, each in a column, as texts. */
function writeLists(workbook: Excel.Workbook, lists: readonly PlannedList[]): void {
  const present = new Set(workbook.worksheets.items.map(({ name }) => name.toLowerCase()));
  for (const { sheet: name, column, title, words } of lists) {
    const isThere = present.has(name.toLowerCase());
    const sheet = isThere ? workbook.worksheets.getItem(name) : workbook.worksheets.add(name);
    present.add(name.toLowerCase());
    const range = sheet.getRangeByIndexes(0, column, words.length + 1, 1);
    range.numberFormat = [title, ...words].map(() => ['@']);
    range.values = [title, ...words].map((word) => [word]);
    range.format.columnWidth = LIST_WIDTH * POINTS_PER_CHARACTER;
  }
}

const LIST_WIDTH = 24;

function writeRule(sheet: Excel.Worksheet, { row, column, takes, strict, title, text }: PlannedRule): void {
  const { dataValidation } = sheet.getRangeByIndexes(row, column, 1, 1);
  dataValidation.rule =
    'accepts' in takes
      ? { custom: { formula: `=${takes.accepts}` } }
      : {
          // Excel reads the words between commas in every country.
          list: {
            inCellDropDown: true,
            source: 'words' in takes ? takes.words.join(',') : `=${takes.cells}`,
          },
        };
  dataValidation.errorAlert = { showAlert: true, style: strict ? 'Stop' : 'Warning', title, message: text };
}

/** The cells of a verdict take the color of its word. */
function colorVerdict(range: Excel.Range, area: Area): void {
  const first = absoluteArea({ ...area, bottom: area.top, right: area.left });
  // Excel puts each in front of those before it.
  for (const [word, { font, fill }] of [...SCALE].reverse()) {
    const { custom } = range.conditionalFormats.add('Custom');
    custom.rule.formula = `=${first}="${word}"`;
    custom.format.font.color = font.color;
    custom.format.fill.color = fill;
  }
}

/** What to say of a form, or of a design, that was written at a cell. */
export const writtenText = (what: string, { sheet, area }: FormPlan): string =>
  `The ${what} stands at ${areaAddress(area)} of ${sheet}. ${
    canUndo()
      ? 'One step of undo takes it back.'
      : 'This Excel cannot undo what an add-in writes: to be rid of it, delete its rows and its names.'
  }`;

/** What to say of a design on sheets of its own. */
export const addedText = ({ sheets }: DesignPlans): string =>
  `Made: ${sheets.map(({ name }) => name).join(', ')}. ${
    canUndo()
      ? 'One step of undo takes them back.'
      : 'This Excel cannot undo what an add-in writes: to be rid of them, delete the sheets and their names.'
  }`;
