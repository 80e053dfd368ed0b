/// <reference types="office-js" />
import { areaAddress, parseArea, parseCell, type Area } from '../cells/address';
import { readReference } from '../cells/reference';
import { numberText } from '../core/format';
import type {
  CellDescription,
  ConditionDescription,
  PrintDescription,
  SheetDescription,
  SheetsDescription,
} from '../package/description';
import type { ChartDescription } from '../package/drawings/writeChart';
import { messageOf } from '../panel/messageOf';
import { POINTS_PER_CHARACTER, POINTS_PER_INCH } from './measures';
import { inOneStep } from './undoStep';
import { dressCells, fillCells, rangeOf, type WrittenCell } from './writeCells';

export interface DescribedSheets {
  readonly description: SheetsDescription;
  /** Over the first of the sheets. */
  readonly charts?: readonly ChartDescription[];
  /** Whether the first of the sheets is brought to the front. */
  readonly inFront: boolean;
}

/**
 * Adds sheets to the open workbook as their description has them: the writer beside that of files, one step to undo. Gives
 * what is to be said of pages that could not be set up for printing, which some Excel without a printer refuse.
 */
export const writeSheets = ({ description, charts = [], inFront }: DescribedSheets): Promise<string> =>
  inOneStep(async (context) => {
    const { workbook } = context;
    const { sheets, styles = {}, names = {}, hiddenNames = {} } = description;
    const added = sheets.map((sheet) => ({ sheet, target: addSheet(workbook, sheet) }));
    // Before the formulas that use them: a formula with a name that is not there shows #NAME? until it is entered again.
    for (const [name, formula] of Object.entries(names)) workbook.names.add(name, `=${formula}`);
    for (const [name, formula] of Object.entries(hiddenNames))
      workbook.names.add(name, `=${formula}`).visible = false;
    for (const { sheet, target } of added) {
      const cells = writtenCells(sheet, styles);
      for (const area of sheet.merges ?? []) rangeOf(target, areaAt(area)).merge(false);
      dressCells(target, cells);
      await fillCells(context, target, cells);
      // Excel puts each in front of those before it.
      for (const condition of [...(sheet.conditions ?? [])].reverse()) writeCondition(target, condition);
    }
    const [first] = added;
    if (first) {
      for (const chart of charts) writeChart(workbook, first.target, chart, first.sheet);
      if (inFront) {
        first.target.activate();
        first.target.getRangeByIndexes(0, 0, 1, 1).select();
      }
    }
    await context.sync();
    return setUpPages(context, sheets);
  });

/** As a sync of its own, after all else: it may be refused. */
export async function setUpPages(
  context: Excel.RequestContext,
  sheets: readonly SheetDescription[],
): Promise<string> {
  const printed = sheets.filter(({ print }) => print !== undefined);
  if (printed.length === 0) return '';
  for (const { name, print } of printed)
    if (print) setUp(context.workbook.worksheets.getItem(name).pageLayout, print);
  try {
    await context.sync();
    return '';
  } catch (error) {
    return `Excel refused to set up its pages for printing: ${messageOf(error)}`;
  }
}

/** The sheet without its cells. */
export function addSheet({ worksheets }: Excel.Workbook, sheet: SheetDescription): Excel.Worksheet {
  const target = worksheets.add(sheet.name);
  const { gridlines, tabColor, freeze, columns = {}, rows = {} } = sheet;
  if (gridlines === false) target.showGridlines = false;
  if (tabColor !== undefined) target.tabColor = tabColor;
  const corner = freeze === undefined ? undefined : parseCell(freeze);
  if (corner) freezeAt(target, corner);
  for (const [run, characters] of Object.entries(columns)) {
    const [from = '', to = from] = run.split(':');
    rangeOf(target, areaAt(`${from}1:${to}1`)).format.columnWidth = characters * POINTS_PER_CHARACTER;
  }
  for (const [row, points] of Object.entries(rows))
    target.getRangeByIndexes(Number(row) - 1, 0, 1, 1).format.rowHeight = points;
  return target;
}

function freezeAt({ freezePanes }: Excel.Worksheet, { row, column }: { row: number; column: number }): void {
  if (column === 0) freezePanes.freezeRows(row);
  else freezePanes.freezeAt(areaAddress({ top: 0, left: 0, bottom: row - 1, right: column - 1 }));
}

function writtenCells(
  { cells }: SheetDescription,
  styles: NonNullable<SheetsDescription['styles']>,
): WrittenCell[] {
  return Object.entries(cells).flatMap(([address, described]) => {
    const place = parseCell(address);
    if (!place) return [];
    const cell: CellDescription = typeof described === 'object' ? described : { value: described };
    const look = cell.style === undefined ? undefined : styles[cell.style];
    return [
      {
        ...place,
        ...(cell.value !== undefined && { value: cell.value }),
        ...(cell.formula !== undefined && { formula: cell.formula }),
        ...(look && { look }),
      },
    ];
  });
}

/** Its formula is seen from the first cell of its range (OfficeDev/office-js #5194). */
function writeCondition(sheet: Excel.Worksheet, { cells, when, style }: ConditionDescription): void {
  const { custom } = rangeOf(sheet, areaAt(cells)).conditionalFormats.add('Custom');
  custom.rule.formula = `=${when}`;
  const { font, fill, borders = {} } = style;
  if (font?.bold !== undefined) custom.format.font.bold = font.bold;
  if (font?.color !== undefined) custom.format.font.color = font.color;
  if (fill !== undefined) custom.format.fill.color = fill;
  for (const [side, edge] of EDGES) {
    const line = borders[side];
    if (!line) continue;
    const border = custom.format.borders.getItem(edge);
    border.style = 'Continuous';
    if (line.color !== undefined) border.color = line.color;
  }
}

const EDGES = [
  ['top', 'EdgeTop'],
  ['right', 'EdgeRight'],
  ['bottom', 'EdgeBottom'],
  ['left', 'EdgeLeft'],
] as const;

/** What files have where nothing is told, in inches. */
const MARGINS = { side: 0.6, top: 0.7, bottom: 0.7 } as const;

function setUp(layout: Excel.PageLayout, print: PrintDescription): void {
  const { side, top, bottom } = { ...MARGINS, ...print.margins };
  layout.paperSize = print.paper === 'A4' ? 'A4' : 'Letter';
  layout.orientation = print.landscape === true ? 'Landscape' : 'Portrait';
  layout.zoom = { horizontalFitToPages: print.pagesWide ?? 1 };
  layout.leftMargin = layout.rightMargin = side * POINTS_PER_INCH;
  layout.topMargin = top * POINTS_PER_INCH;
  layout.bottomMargin = bottom * POINTS_PER_INCH;
  if (print.area !== undefined) layout.setPrintArea(print.area);
  if (print.titleRows !== undefined)
    layout.setPrintTitleRows(print.titleRows.replace(/\d+/g, (row) => `$${row}`));
  const { defaultForAllPages } = layout.headersFooters;
  const { left, center, right } = print.footer ?? {};
  if (left !== undefined) defaultForAllPages.leftFooter = left;
  if (center !== undefined) defaultForAllPages.centerFooter = center;
  if (right !== undefined) defaultForAllPages.rightFooter = right;
}

const CHART_TYPES = {
  scatter: 'XYScatterLines',
  line: 'LineMarkers',
  column: 'ColumnClustered',
  bar: 'BarClustered',
} as const;

function writeChart(
  workbook: Excel.Workbook,
  sheet: Excel.Worksheet,
  { kind, title, alongTitle, valuesTitle, over, series }: ChartDescription,
  described: SheetDescription,
): void {
  const referred = (reference: string): Excel.Range => {
    const found = readReference(reference);
    if (!found) throw new Error(`A chart shows "${reference}", which is no area.`);
    return rangeOf(workbook.worksheets.getItem(found.sheet), found.area);
  };
  const [first] = series;
  if (!first) return;
  const chart = sheet.charts.add(CHART_TYPES[kind], referred(first.values), 'Auto');
  series.forEach(({ name, along, values }, at) => {
    const words = typeof name === 'string' ? name : wordsAt(described, name.cell);
    const one = at === 0 ? chart.series.getItemAt(0) : chart.series.add(words);
    if (at === 0) one.name = words;
    else one.setValues(referred(values));
    one.setXAxisValues(referred(along));
  });
  chart.title.text = title;
  chart.legend.visible = series.length > 1;
  if (series.length > 1) chart.legend.position = 'Bottom';
  chart.axes.categoryAxis.title.text = alongTitle;
  chart.axes.valueAxis.title.text = valuesTitle;
  // Beside the plot also where a scale runs below 0.
  chart.axes.categoryAxis.tickLabelPosition = 'Low';
  chart.axes.valueAxis.tickLabelPosition = 'Low';
  const { top, left, bottom, right } = areaAt(over);
  chart.setPosition(sheet.getRangeByIndexes(top, left, 1, 1), sheet.getRangeByIndexes(bottom, right, 1, 1));
}

/** Office.js names a series by a text only: that of the cell which names it in a file. */
function wordsAt({ cells }: SheetDescription, reference: string): string {
  const area = readReference(reference)?.area;
  const described = area && cells[areaAddress(area)];
  const value = typeof described === 'object' ? described.value : described;
  return typeof value === 'number' ? numberText(value) : String(value ?? '');
}

function areaAt(address: string): Area {
  const area = parseArea(address);
  if (!area) throw new Error(`"${address}" is no area.`);
  return area;
}
