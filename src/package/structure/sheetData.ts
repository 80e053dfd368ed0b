/** The rows and cells of a sheet after an act. */
import {
  areaAddress,
  areaContains,
  cellAddress,
  MAX_COLUMNS,
  MAX_ROWS,
  parseArea,
  type Area,
} from '../../cells/address';
import { withAttributes } from '../xml';
import { CannotChange } from './acts';
import { rewriteFormula, type Rewriting } from './formula';
import type { Plan } from './plan';
import { addressOf, arrayArea, isDynamic, type CellXml, type RowXml, type SheetXml } from './sheetCells';
import { formulaElements, formulaTexts, type FormulaAfter } from './sharedFormulas';

/** A cell as it is to be written, without its own address. */
export interface MovedCell {
  readonly row: number;
  readonly column: number;
  readonly write: (row: number, column: number) => string;
}

export interface MovedData {
  /** Cells that stay on the sheet. */
  readonly here: readonly MovedCell[];
  /** Cells that go to another sheet. */
  readonly away: readonly MovedCell[];
}

/** Every cell of the sheet at its new place; the texts of formulas rewritten. */
export function moveCells(
  xml: string,
  sheet: SheetXml,
  plan: Plan,
  how: Rewriting,
  away: Rewriting,
): MovedData {
  const texts = formulaTexts(sheet.rows);
  const cells = sheet.rows.flatMap((row) => row.cells);
  const arrays = cells.flatMap((cell) => {
    const area = arrayArea(cell);
    return area ? [arrayAfter(plan, how.from, cell, area)] : [];
  });
  const dropped = valuesToDrop(cells, arrays);
  const places = new Map<
    CellXml,
    { readonly sheet: string; readonly row: number; readonly column: number }
  >();
  for (const cell of cells) {
    const { row, column } = cell;
    const placed = plan.area(how.from, { top: row, bottom: row, left: column, right: column });
    if (placed) places.set(cell, { sheet: placed.sheet, row: placed.top, column: placed.left });
  }
  const after = new Map<CellXml, FormulaAfter>();
  for (const [cell, text] of texts) {
    const at = places.get(cell);
    if (!at) continue;
    const ref = arrays.find((one) => one.cell === cell)?.after;
    const context = at.sheet === how.to ? how : away;
    after.set(cell, {
      text: rewriteFormula(text, context),
      at,
      ...(ref && { ref: areaAddress(ref) }),
      ...dataTableInputs(cell, context),
    });
  }
  const elements = formulaElements(texts, after);
  const here: MovedCell[] = [];
  const gone: MovedCell[] = [];
  for (const [cell, at] of places) {
    const one = {
      row: at.row,
      column: at.column,
      write: (row: number, column: number) =>
        cellText(xml, cell, row, column, elements.get(cell), dropped.has(cell)),
    };
    (at.sheet === how.to ? here : gone).push(one);
  }
  return { here, away: gone };
}

/** Where the input cells of a data table lie now; one that is gone is told by a mark of its own. */
function dataTableInputs({ formula }: CellXml, how: Rewriting): Pick<FormulaAfter, 'inputs'> {
  const attributes = formula?.tag.attributes;
  if (attributes?.['t'] !== 'dataTable') return {};
  const inputs: Record<string, string> = {};
  for (const [key, mark] of [
    ['r1', 'del1'],
    ['r2', 'del2'],
  ] as const) {
    const text = attributes[key];
    if (text === undefined || parseArea(text) === undefined) continue;
    const moved = rewriteFormula(text, how);
    if (moved.includes('#REF!')) inputs[mark] = '1';
    else if (moved.includes('!'))
      throw new CannotChange(
        `A data table puts values into ${text}, which cannot go to another sheet; delete the data table first.`,
      );
    else if (moved !== text) inputs[key] = moved;
  }
  return Object.keys(inputs).length === 0 ? {} : { inputs };
}

/** A sheet whose cells stay where they are: the `<f>` elements that read otherwise, as edits of its text. */
export function formulaEdits(
  sheet: SheetXml,
  how: Rewriting,
): { readonly start: number; readonly end: number; readonly text: string }[] {
  const texts = formulaTexts(sheet.rows);
  const after = new Map<CellXml, FormulaAfter>();
  for (const [cell, text] of texts) after.set(cell, { text: rewriteFormula(text, how), at: cell });
  return [...formulaElements(texts, after)].flatMap(([{ formula }, text]) =>
    formula ? [{ start: formula.tag.start, end: formula.end, text }] : [],
  );
}

/** Rows with their cells, in order. */
export function writeRows(xml: string, sheet: SheetXml, plan: Plan, cells: readonly MovedCell[]): string {
  const prefix = sheet.data?.prefix ?? '';
  const tags = new Map<number, string>();
  for (const { row, tag, cells: own } of sheet.rows) {
    const text = xml.slice(tag.start, tag.end);
    // Some programs list every row of a sheet though nothing is in it.
    if (own.length === 0 && SAYS_NOTHING.test(text)) continue;
    const to = plan.line('rows', row);
    if (to !== undefined) tags.set(to, rowTag(text, tag, to));
  }
  const byRow = new Map<number, MovedCell[]>();
  const put = (cell: MovedCell): void => {
    const row = byRow.get(cell.row);
    if (row) row.push(cell);
    else byRow.set(cell.row, [cell]);
  };
  cells.forEach(put);
  lookOfOpened(sheet, plan, tags).forEach(put);
  const rows = [...new Set([...tags.keys(), ...byRow.keys()])].sort((a, b) => a - b);
  return rows
    .map((row) => {
      const open = tags.get(row) ?? `<${prefix}row r="${row + 1}">`;
      const inRow = (byRow.get(row) ?? []).sort((a, b) => a.column - b.column);
      return `${open}${inRow.map((cell) => cell.write(cell.row, cell.column)).join('')}</${prefix}row>`;
    })
    .join('');
}

const SAYS_NOTHING = /^<[^\s/>]+(?:\s+(?:r|spans)="[^"]*")*\s*\/?>$/;
const PLACE = /(\sr=")[^"]*"/;

/** A row at its new place. The hint which columns it spans does not hold any more. */
function rowTag(text: string, tag: RowXml['tag'], row: number): string {
  // Written out of its attributes, a tag takes ten times as long: sheets have a million rows.
  if (!PLACE.test(text) || text.includes("'"))
    return withAttributes({ ...tag, selfClosing: false }, { r: String(row + 1), spans: undefined });
  return text
    .replace(PLACE, `$1${row + 1}"`)
    .replace(/\sspans="[^"]*"/, '')
    .replace(/\s*\/>$/, '>');
}

/** New rows and columns take the look of those before them. */
function lookOfOpened(sheet: SheetXml, plan: Plan, tags: Map<number, string>): MovedCell[] {
  const { opened } = plan;
  if (!opened || opened.at === 0) return [];
  const prefix = sheet.data?.prefix ?? '';
  const blank = (row: number, column: number, style: string): MovedCell => ({
    row,
    column,
    write: () => `<${prefix}c r="${cellAddress(row, column)}" s="${style}"/>`,
  });
  const lines = Array.from({ length: opened.count }, (_, i) => opened.at + i);
  if (opened.axis === 'rows') {
    const before = sheet.rows.find(({ row }) => row === opened.at - 1);
    if (!before) return [];
    return lines.flatMap((row) => {
      const look = { ...before.tag, selfClosing: false };
      tags.set(row, withAttributes(look, { r: String(row + 1), spans: undefined }));
      return before.cells.flatMap(({ column, tag }) =>
        tag.attributes['s'] === undefined ? [] : [blank(row, column, tag.attributes['s'])],
      );
    });
  }
  return sheet.rows.flatMap(({ row, cells }) => {
    const style = cells.find(({ column }) => column === opened.at - 1)?.tag.attributes['s'];
    return style === undefined ? [] : lines.map((column) => blank(row, column, style));
  });
}

function cellText(
  xml: string,
  cell: CellXml,
  row: number,
  column: number,
  formula: string | undefined,
  dropsValue: boolean,
): string {
  const { tag, end } = cell;
  const moved = row !== cell.row || column !== cell.column || tag.attributes['r'] === undefined;
  if (dropsValue)
    return withAttributes(
      { ...tag, selfClosing: true },
      { r: cellAddress(row, column), t: undefined, cm: undefined },
    );
  const text = xml.slice(tag.start, tag.end);
  const isPlain = PLACE.test(text) && !text.includes("'");
  const open = !moved
    ? text
    : isPlain
      ? text.replace(PLACE, `$1${cellAddress(row, column)}"`)
      : withAttributes(tag, { r: cellAddress(row, column) });
  if (formula === undefined || !cell.formula) return open + xml.slice(tag.end, end);
  return open + xml.slice(tag.end, cell.formula.tag.start) + formula + xml.slice(cell.formula.end, end);
}

interface ArrayOf {
  readonly cell: CellXml;
  readonly area: Area;
  readonly after: Area | undefined;
  /** All its cells go the same way. */
  readonly together: boolean;
}

/** Where the array of a formula lies after the act; a dynamic one keeps its size behind its first cell. */
function arrayAfter(plan: Plan, sheet: string, cell: CellXml, area: Area): ArrayOf {
  const place = { top: cell.row, bottom: cell.row, left: cell.column, right: cell.column };
  const anchor = plan.area(sheet, place);
  const [height, width] = [area.bottom - area.top, area.right - area.left];
  const parts = plan.cut(sheet, area).map((piece) => plan.area(sheet, piece));
  const [whole] = parts;
  const together =
    parts.length === 1 &&
    whole !== undefined &&
    whole.bottom - whole.top === height &&
    whole.right - whole.left === width;
  if (!isDynamic(cell) && !together && parts.some((part) => part)) {
    const what = cell.formula?.tag.attributes['t'] === 'dataTable' ? 'data table' : 'array formula';
    throw new CannotChange(
      `The ${what} of ${areaAddress(area)} on "${sheet}" fills these cells as one and cannot be parted; change or delete it first.`,
    );
  }
  const after = anchor && {
    top: anchor.top,
    left: anchor.left,
    bottom: Math.min(anchor.top + height, MAX_ROWS - 1),
    right: Math.min(anchor.left + width, MAX_COLUMNS - 1),
  };
  return { cell, area, after, together };
}

/** Results of dynamic arrays that do not lie behind their formula any more: the next calculation fills them anew. */
function valuesToDrop(cells: readonly CellXml[], arrays: readonly ArrayOf[]): Set<CellXml> {
  const dropped = new Set<CellXml>();
  for (const { cell, area } of arrays.filter(({ together }) => !together)) {
    for (const one of cells)
      if (one !== cell && !one.formula && areaContains(area, one.row, one.column)) dropped.add(one);
  }
  return dropped;
}

/** The first cell with something in it that would be pushed off the sheet. */
export function pushedOff(sheet: SheetXml, plan: Plan, name: string): string | undefined {
  if (!plan.pushes) return undefined;
  const cells = sheet.rows.flatMap((row) => row.cells);
  const lost = cells.find(({ row, column, tag }) => {
    const holdsSomething = !tag.selfClosing;
    return holdsSomething && !plan.area(name, { top: row, bottom: row, left: column, right: column });
  });
  return lost && addressOf(lost);
}
