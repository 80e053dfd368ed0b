/// <reference types="office-js" />
import { areaAddress, type Area } from '../cells/address';
import { absoluteArea } from '../forms/groundOf';
import type { Look } from '../forms/looks';
import type { FormPlan, PlannedCell, PlannedList, PlannedRule } from '../forms/plan';
import { SCALE } from '../forms/scale';
import { POINTS_PER_CHARACTER, typedFormulaOf } from './writeDesignSheets';

/** Whether this Excel takes back what an add-in wrote; one that does not forgets all earlier steps as well. */
export const canUndo = (): boolean => Office.context.requirements.isSetSupported('ExcelApi', '1.19');

/**
 * Writes a form into the open workbook. Everything that changes it goes in one batch: one step to undo, and where
 * Excel refuses a part of it, the message says what.
 */
export const writeForm = (plan: FormPlan): Promise<void> =>
  Excel.run(async (context) => {
    const { workbook } = context;
    const sheet = workbook.worksheets.getItem(plan.sheet);
    const rows = plan.heights.map(({ row, points }) => {
      const { format } = sheet.getRangeByIndexes(row, 0, 1, 1);
      format.load('rowHeight');
      return { format, points };
    });
    workbook.worksheets.load('items/name');
    await context.sync();

    // A cell is joined with others before it is filled: joining forgets what stands in the others.
    for (const area of plan.merges) rangeOf(sheet, area).merge(false);
    for (const cell of plan.cells) writeCell(sheet, cell);
    for (const { format, points } of rows) if (format.rowHeight < points) format.rowHeight = points;
    for (const { column, characters } of plan.widths)
      sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = characters * POINTS_PER_CHARACTER;
    writeLists(workbook, plan.lists);
    for (const rule of plan.rules) writeRule(sheet, rule);
    for (const area of plan.verdicts) colorVerdict(rangeOf(sheet, area), area);
    for (const { name, area } of plan.names) workbook.names.add(name, rangeOf(sheet, area));
    sheet.getRangeByIndexes(plan.area.top, plan.area.left, 1, 1).select();
    await context.sync();
  });

const rangeOf = (sheet: Excel.Worksheet, { top, left, bottom, right }: Area): Excel.Range =>
  sheet.getRangeByIndexes(top, left, bottom - top + 1, right - left + 1);

function writeCell(sheet: Excel.Worksheet, { row, column, value, formula, look }: PlannedCell): void {
  const range = sheet.getRangeByIndexes(row, column, 1, 1);
  // The format comes first: it decides whether Excel takes what is typed for a text, a number or a day.
  dress(range, look);
  const isText = look.numberFormat === '@';
  if (formula !== undefined) range.formulas = [[typedFormulaOf(formula)]];
  else if (typeof value === 'string' && !isText) range.formulas = [[`'${value}`]];
  else if (value !== undefined) range.values = [[value]];
}

const ALIGNMENTS = { left: 'Left', center: 'Center', right: 'Right' } as const;
const EDGES = { top: 'EdgeTop', right: 'EdgeRight', bottom: 'EdgeBottom', left: 'EdgeLeft' } as const;

function dress(range: Excel.Range, look: Look): void {
  const { format } = range;
  const { font, fill, borders = {}, horizontal, vertical, wrap, indent, shrink, numberFormat } = look;
  if (numberFormat !== undefined) range.numberFormat = [[numberFormat]];
  if (font) dressFont(format.font, font);
  if (fill !== undefined) format.fill.color = fill;
  if (horizontal) format.horizontalAlignment = ALIGNMENTS[horizontal];
  if (vertical) format.verticalAlignment = 'Center';
  if (wrap !== undefined) format.wrapText = wrap;
  if (indent !== undefined) format.indentLevel = indent;
  if (shrink !== undefined) format.shrinkToFit = shrink;
  for (const side of Object.keys(borders) as (keyof typeof borders)[]) {
    const line = borders[side];
    if (!line) continue;
    const border = format.borders.getItem(EDGES[side]);
    border.style = 'Continuous';
    border.weight = 'Thin';
    border.color = line.color;
  }
}

function dressFont(into: Excel.RangeFont, font: NonNullable<Look['font']>): void {
  if (font.name !== undefined) into.name = font.name;
  if (font.size !== undefined) into.size = font.size;
  if (font.bold !== undefined) into.bold = font.bold;
  if (font.italic !== undefined) into.italic = font.italic;
  if (font.underline) into.underline = 'Single';
  if (font.color !== undefined) into.color = font.color;
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
  }
}

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
  for (const [word, { font, fill }] of SCALE) {
    const { custom } = range.conditionalFormats.add('Custom');
    custom.rule.formula = `=${first}="${word}"`;
    custom.format.font.color = font.color;
    custom.format.fill.color = fill;
  }
}

/** What to say of a form that was written. */
export const writtenText = ({ sheet, area }: FormPlan): string =>
  `The form stands at ${areaAddress(area)} of ${sheet}. ${
    canUndo()
      ? 'One step of undo takes it back.'
      : 'This Excel cannot undo what an add-in writes: to be rid of it, delete its rows and its names.'
  }`;
