/** A new sheet as XML, its elements in the order that ECMA-376 part 1, 18.3.1.99 asks for. */
import type {
  CellDescription,
  ConditionDescription,
  HeaderDescription,
  PrintDescription,
  SheetDescription,
  ValidationDescription,
} from './description';
import type { Area } from '../cells/address';
import {
  areasOverlap,
  areaAddress,
  cellAddress,
  columnLetters,
  MAX_COLUMNS,
  parseArea,
  parseCell,
} from '../cells/address';
import { cellXml } from './cellXml';
import { needsArrayMark, toFileSpelling } from './spelling';
import { escapeXml } from './xml';

export interface SheetParts {
  /** Index of a style by its name in the description. */
  readonly style: (name: string) => number;
  /** Index of the overlay of a condition. */
  readonly overlay: (condition: ConditionDescription) => number;
  /** The number that marks dynamic arrays. */
  readonly mark: () => number;
  /** Id of a relationship to an address outside. */
  readonly relate: (address: string) => string;
  /** The first sheet of a workbook is in front. */
  readonly isSelected: boolean;
}

export interface PlacedCell extends CellDescription {
  readonly row: number;
  readonly column: number;
}

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const DOCUMENT = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PAPER = { Letter: 1, A4: 9 } as const;

export function placedCells(sheet: SheetDescription): PlacedCell[] {
  const cells = new Map<number, PlacedCell>();
  for (const [address, content] of Object.entries(sheet.cells)) {
    const place = parseCell(address);
    if (place === undefined)
      throw new Error(`The sheet "${sheet.name}" describes a cell at "${address}", which is no address.`);
    const { row, column } = place;
    const cell = typeof content === 'object' ? { ...content, row, column } : { row, column, value: content };
    cells.set(row * MAX_COLUMNS + column, cell);
  }
  const merges = (sheet.merges ?? []).map((merge) => areaOf(sheet, merge));
  for (const [at, merge] of merges.entries()) {
    if (merges.slice(0, at).some((other) => areasOverlap(other, merge))) {
      throw new Error(`The sheet "${sheet.name}" merges cells of ${areaAddress(merge)} twice.`);
    }
    spreadStyle(cells, merge);
  }
  return [...cells.values()].sort((a, b) => a.row - b.row || a.column - b.column);
}

/** Borders of a merged area are drawn by each of its cells. */
function spreadStyle(cells: Map<number, PlacedCell>, area: Area): void {
  const style = cells.get(area.top * MAX_COLUMNS + area.left)?.style;
  if (style === undefined) return;
  for (let row = area.top; row <= area.bottom; row++) {
    for (let column = area.left; column <= area.right; column++) {
      const key = row * MAX_COLUMNS + column;
      if (!cells.has(key)) cells.set(key, { row, column, style });
    }
  }
}

export function sheetXml(sheet: SheetDescription, cells: readonly PlacedCell[], parts: SheetParts): string {
  const pages = sheet.print;
  return [
    `<worksheet xmlns="${MAIN}" xmlns:r="${DOCUMENT}">`,
    sheetProperties(sheet),
    `<dimension ref="${usedArea(cells)}"/>`,
    sheetView(sheet, parts.isSelected),
    '<sheetFormatPr defaultRowHeight="15"/>',
    columns(sheet),
    `<sheetData>${rows(sheet, cells, parts)}</sheetData>`,
    sheet.protect === true
      ? '<sheetProtection sheet="1" objects="1" scenarios="1" formatColumns="0" formatRows="0"/>'
      : '',
    counted(
      'mergeCells',
      (sheet.merges ?? []).map((merge) => `<mergeCell ref="${areaAddress(areaOf(sheet, merge))}"/>`),
    ),
    (sheet.conditions ?? [])
      .map((condition, at) => conditional(condition, parts.overlay(condition), at + 1))
      .join(''),
    counted('dataValidations', (sheet.validations ?? []).map(validation)),
    hyperlinks(cells, parts),
    pages === undefined ? '' : printSetup(pages),
    '</worksheet>',
  ].join('');
}

function areaOf(sheet: SheetDescription, address: string): Area {
  const area = parseArea(address);
  if (area === undefined)
    throw new Error(`The sheet "${sheet.name}" describes the area "${address}", which is no address.`);
  return area;
}

function counted(name: string, entries: readonly string[]): string {
  return entries.length === 0 ? '' : `<${name} count="${entries.length}">${entries.join('')}</${name}>`;
}

function sheetProperties({ tabColor, print }: SheetDescription): string {
  const tab = tabColor === undefined ? '' : `<tabColor rgb="FF${tabColor.replace('#', '').toUpperCase()}"/>`;
  const fit = print === undefined ? '' : '<pageSetUpPr fitToPage="1"/>';
  return tab + fit === '' ? '' : `<sheetPr>${tab}${fit}</sheetPr>`;
}

function usedArea(cells: readonly PlacedCell[]): string {
  if (cells.length === 0) return 'A1';
  const rowsUsed = cells.map((cell) => cell.row);
  const columnsUsed = cells.map((cell) => cell.column);
  const least = (numbers: readonly number[]) => numbers.reduce((a, b) => Math.min(a, b));
  const most = (numbers: readonly number[]) => numbers.reduce((a, b) => Math.max(a, b));
  return areaAddress({
    top: least(rowsUsed),
    left: least(columnsUsed),
    bottom: most(rowsUsed),
    right: most(columnsUsed),
  });
}

function sheetView({ gridlines, zoom, freeze }: SheetDescription, isSelected: boolean): string {
  const grid = gridlines === false ? ' showGridLines="0"' : '';
  const selected = isSelected ? ' tabSelected="1"' : '';
  const scale = zoom === undefined ? '' : ` zoomScale="${zoom}" zoomScaleNormal="${zoom}"`;
  const inner = freeze === undefined ? '' : frozenPane(freeze);
  return `<sheetViews><sheetView${grid}${selected}${scale} workbookViewId="0">${inner}</sheetView></sheetViews>`;
}

function frozenPane(freeze: string): string {
  const place = parseCell(freeze);
  if (place === undefined || place.row + place.column === 0) return '';
  const { row, column } = place;
  const pane = row === 0 ? 'topRight' : column === 0 ? 'bottomLeft' : 'bottomRight';
  const split = (column === 0 ? '' : ` xSplit="${column}"`) + (row === 0 ? '' : ` ySplit="${row}"`);
  const top = cellAddress(row, column);
  return `<pane${split} topLeftCell="${top}" activePane="${pane}" state="frozen"/><selection pane="${pane}" activeCell="${top}" sqref="${top}"/>`;
}

function columns({ columns: widths, name }: SheetDescription): string {
  const runs = Object.entries(widths ?? {}).map(([run, width]) => {
    const [first = '', last = first] = run.split(':');
    const from = parseCell(`${first}1`)?.column;
    const to = parseCell(`${last}1`)?.column;
    if (from === undefined || to === undefined)
      throw new Error(`The sheet "${name}" describes the columns "${run}", which are none.`);
    return { from, to, width };
  });
  const inner = runs
    .sort((a, b) => a.from - b.from)
    .map(({ from, to, width }) => {
      const size = width === 0 ? 'width="9" hidden="1"' : `width="${width}"`;
      return `<col min="${from + 1}" max="${to + 1}" ${size} customWidth="1"/>`;
    })
    .join('');
  return inner === '' ? '' : `<cols>${inner}</cols>`;
}

function rows(sheet: SheetDescription, cells: readonly PlacedCell[], parts: SheetParts): string {
  const byRow = new Map<number, PlacedCell[]>();
  for (const row of Object.keys(sheet.rows ?? {})) byRow.set(Number(row) - 1, []);
  for (const cell of cells) {
    const row = byRow.get(cell.row);
    if (row === undefined) byRow.set(cell.row, [cell]);
    else row.push(cell);
  }
  return [...byRow]
    .sort(([a], [b]) => a - b)
    .map(([row, inRow]) => {
      const height = sheet.rows?.[row + 1];
      const size =
        height === undefined ? '' : height === 0 ? ' hidden="1"' : ` ht="${height}" customHeight="1"`;
      return `<row r="${row + 1}"${size}>${inRow.map((cell) => newCell(cell, parts)).join('')}</row>`;
    })
    .join('');
}

function newCell(cell: PlacedCell, parts: SheetParts): string {
  const style = cell.style === undefined ? 0 : parts.style(cell.style);
  const place = { row: cell.row, column: cell.column, style };
  if (cell.formula === undefined) return cellXml({ ...place, value: cell.value ?? null, formula: '' });
  const isArray = cell.fills !== undefined || needsArrayMark(cell.formula);
  const area = cell.fills ?? cellAddress(cell.row, cell.column);
  const formula = `<f${isArray ? ` t="array" ref="${area}"` : ''}>${escapeXml(toFileSpelling(cell.formula))}</f>`;
  return cellXml({ ...place, value: cell.value, formula, mark: isArray ? parts.mark() : undefined });
}

export function conditional(condition: ConditionDescription, overlay: number, priority: number): string {
  const rule = `<cfRule type="expression" dxfId="${overlay}" priority="${priority}"><formula>${formulaText(condition.when)}</formula></cfRule>`;
  return `<conditionalFormatting sqref="${escapeXml(condition.cells)}">${rule}</conditionalFormatting>`;
}

const formulaText = (formula: string) => escapeXml(toFileSpelling(formula));

export function validation({ cells, choices, accepts, prompt, refusal }: ValidationDescription): string {
  for (const message of [prompt, refusal]) {
    if (message === undefined || (message.title.length <= 32 && message.text.length <= 255)) continue;
    throw new Error(
      `The message "${message.title}" is too long: 32 characters of title and 255 of text are the format's limit.`,
    );
  }
  const isList = choices !== undefined;
  const type = isList ? ' type="list"' : accepts === undefined ? '' : ' type="custom"';
  const style =
    refusal?.style === undefined || refusal.style === 'stop' ? '' : ` errorStyle="${refusal.style}"`;
  const refuses = isList || accepts !== undefined || refusal !== undefined ? ' showErrorMessage="1"' : '';
  const error =
    refusal === undefined
      ? ''
      : ` errorTitle="${escapeXml(refusal.title)}" error="${escapeXml(refusal.text)}"`;
  const shows = prompt === undefined ? '' : ' showInputMessage="1"';
  const asks =
    prompt === undefined
      ? ''
      : ` promptTitle="${escapeXml(prompt.title)}" prompt="${escapeXml(prompt.text)}"`;
  const formula =
    choices === undefined ? accepts : typeof choices === 'string' ? choices : writtenList(choices);
  const inner = formula === undefined ? '' : `<formula1>${formulaText(formula)}</formula1>`;
  return `<dataValidation${type}${style} allowBlank="1"${shows}${refuses}${error}${asks} sqref="${escapeXml(cells)}">${inner}</dataValidation>`;
}

/** The format's limits: no comma in a word, 255 characters in all. */
function writtenList(choices: readonly string[]): string {
  const list = choices.join(',');
  if (list.length > 255 || choices.some((one) => one.includes(','))) {
    throw new Error(
      `The choices "${list.slice(0, 40)}…" are too long for a list in the cell itself; put them into cells.`,
    );
  }
  return `"${list.replaceAll('"', '""')}"`;
}

function hyperlinks(cells: readonly PlacedCell[], parts: SheetParts): string {
  const links = cells.flatMap(({ row, column, link }) => {
    if (link === undefined) return [];
    const ref = `ref="${cellAddress(row, column)}"`;
    if (link.startsWith('#')) return [`<hyperlink ${ref} location="${escapeXml(link.slice(1))}"/>`];
    return [`<hyperlink ${ref} r:id="${parts.relate(link)}"/>`];
  });
  return links.length === 0 ? '' : `<hyperlinks>${links.join('')}</hyperlinks>`;
}

function printSetup(print: PrintDescription): string {
  const { side = 0.6, top = 0.7, bottom = 0.7 } = print.margins ?? {};
  const centered = print.centered === true ? '<printOptions horizontalCentered="1"/>' : '';
  const margins = `<pageMargins left="${side}" right="${side}" top="${top}" bottom="${bottom}" header="0.3" footer="0.3"/>`;
  const turned = print.landscape === true ? 'landscape' : 'portrait';
  const fit = `fitToWidth="${print.pagesWide ?? 1}" fitToHeight="${print.pagesTall ?? 0}"`;
  const setup = `<pageSetup paperSize="${PAPER[print.paper]}" ${fit} orientation="${turned}"/>`;
  return centered + margins + setup + headerFooter(print) + pageBreaks(print.breaksBefore ?? []);
}

function headerFooter({ header, footer }: PrintDescription): string {
  const line = (name: string, text: HeaderDescription | undefined) => {
    if (text === undefined) return '';
    const { left, center, right } = text;
    const inner = [
      ['&L', left],
      ['&C', center],
      ['&R', right],
    ]
      .map(([code, one]) => (one === undefined ? '' : `${code ?? ''}${one}`))
      .join('');
    return `<${name}>${escapeXml(inner)}</${name}>`;
  };
  const inner = line('oddHeader', header) + line('oddFooter', footer);
  return inner === '' ? '' : `<headerFooter>${inner}</headerFooter>`;
}

function pageBreaks(before: readonly number[]): string {
  if (before.length === 0) return '';
  const breaks = before.map((row) => `<brk id="${row - 1}" max="16383" man="1"/>`).join('');
  return `<rowBreaks count="${before.length}" manualBreakCount="${before.length}">${breaks}</rowBreaks>`;
}

/** The names under which a sheet keeps what to print: name → formula. */
export function printNames({ name, print }: SheetDescription): [string, string][] {
  const quoted = `'${name.replaceAll("'", "''")}'`;
  const absolute = (row: number, column: number) => `$${columnLetters(column)}$${row + 1}`;
  const area = print?.area === undefined ? undefined : parseArea(print.area);
  const names: [string, string][] = [];
  if (area !== undefined) {
    names.push([
      '_xlnm.Print_Area',
      `${quoted}!${absolute(area.top, area.left)}:${absolute(area.bottom, area.right)}`,
    ]);
  }
  const [first, last = first] = print?.titleRows?.split(':') ?? [];
  if (first !== undefined && last !== undefined)
    names.push(['_xlnm.Print_Titles', `${quoted}!$${first}:$${last}`]);
  return names;
}
