/** A sheet, or a part of it, as an HTML table that looks as the sheet does. */
import { isDateFormat } from 'numfmt';
import { areaContains, columnLetters, type Area } from '../cells/address';
import { generalText, withComma } from '../cells/numberText';
import type { Cell, CellStyle, Sheet, StyleOverlay, Workbook } from '../package/model';
import { cellFinder } from '../package/model';
import { columnPixels, rowPixels } from '../package/pixels';
import { alignment, cellCss } from './cellCss';
import type { Look } from './drawings/chartData';
import {
  areaUnder,
  drawingSvg,
  linesOf,
  placedDrawings,
  type DrawnDrawing,
  type Lines,
} from './drawings/sheetDrawings';
import { escapeHtml } from './html';
import { shownText } from './shownText';
import { textWidth } from './textWidth';

/** What stands in a sheet, where the workbook was calculated since it was read. */
export interface Shown {
  /** The cell's value as it is now; undefined: as the file has it. */
  readonly value?: (sheet: Sheet, row: number, column: number) => Cell['value'] | undefined;
  /** Looks that rules lay over the cell's own. */
  readonly overlays?: (sheet: Sheet, row: number, column: number) => readonly StyleOverlay[];
  /** Cells that charts show, as they are now. */
  readonly look?: Look;
  /** Numbers have the decimal comma of the reader; the file keeps its point. */
  readonly decimalComma?: boolean;
}

export interface TableOptions extends Shown {
  readonly area: Area;
  /** Rows repeated at the top of every page. */
  readonly titleRows?: { readonly first: number; readonly last: number };
  readonly gridlines: boolean;
  /** Letters and numbers at the edges. */
  readonly headings: boolean;
  /** What goes on beyond the area is cut off there, as on a screen, and not broken into lines. */
  readonly cutsAtEdge?: boolean;
  /** Begins the names of the table's classes, so that several tables stand on one page. */
  readonly prefix: string;
  /** HTML attributes of a cell, for a page that does something with it. */
  readonly attributes?: (row: number, column: number) => string;
}

export interface SheetTable {
  readonly html: string;
  /** Pixels at full size. */
  readonly width: number;
  readonly height: number;
}

/** What every page with such tables needs. */
export const TABLE_CSS = `table.sheet { border-collapse: collapse; table-layout: fixed; }
table.sheet :where(td) { padding: 0 3px; overflow: hidden; line-height: 1.15; }
:where(table.sheet td) { white-space: nowrap; }
table.sheet td.flows { overflow: visible; }
table.sheet tr { break-inside: avoid; }
table.gridlines td { border: 1px solid #ccc; }
table.sheet th { font: 8pt Arial, sans-serif; color: #666; background: #f0f0f0; border: 1px solid #ccc; font-weight: normal; }`;

/** Where a wider font stands in for one that is missing, rows grow: widths of letters for that, and the height of a line. */
const WIDE_LETTER = 0.8;
const LINE = 1.55;
const PADDING = 6;
const MAX_CELLS = 200_000;
/** Pixels of the column of row numbers, and of the row of letters. */
const HEADING = 36;
const LETTERS = 18;
/** Drawings stand over the table, whatever its cells do with what is too wide for them. */
const OVER = `table.sheet tr.under { position: relative }
table.sheet td.holder { width: 0; padding: 0; border: 0 }
table.sheet .over { position: absolute; z-index: 1 }
.over svg { display: block }`;
/** Of a number's size, the least that it is set in before it becomes ###. */
const SMALLEST = 0.55;

/** The cells of a sheet that show something, or lie under a drawing. */
export function usedArea(workbook: Workbook, sheet: Sheet): Area | undefined {
  const shown = sheet.cells.flatMap(({ row, column, value, formula, style }): Area[] => {
    const look = workbook.styles[style];
    const shows =
      value !== null ||
      formula !== undefined ||
      look?.fill !== undefined ||
      Object.keys(look?.borders ?? {}).length > 0;
    return shows ? [{ top: row, left: column, bottom: row, right: column }] : [];
  });
  const all = [...shown, ...placedDrawings(workbook, sheet).map(({ box }) => areaUnder(box, sheet))];
  return all.reduce<Area | undefined>(
    (area, one) => ({
      top: Math.min(area?.top ?? one.top, one.top),
      left: Math.min(area?.left ?? one.left, one.left),
      bottom: Math.max(area?.bottom ?? one.bottom, one.bottom),
      right: Math.max(area?.right ?? one.right, one.right),
    }),
    undefined,
  );
}

export function sheetTable(workbook: Workbook, sheet: Sheet, options: TableOptions): SheetTable {
  return new TableWriter(workbook, sheet, options).write();
}

class TableWriter {
  private readonly find: (row: number, column: number) => Cell | undefined;
  private readonly rows: readonly number[];
  private readonly columns: readonly number[];
  private readonly widths: ReadonlyMap<number, number>;
  private readonly heights: ReadonlyMap<number, number>;
  /** Heights with room for what wraps. */
  private readonly grown = new Map<number, number>();
  /** What stands over the cells, by the row that it hangs on. */
  private readonly drawings = new Map<number, DrawnDrawing[]>();
  private readonly lines: Lines;
  /** The look of each kind of cell once. */
  private readonly classes = new Map<string, string>();

  constructor(
    private readonly workbook: Workbook,
    private readonly sheet: Sheet,
    private readonly options: TableOptions,
  ) {
    const { area } = options;
    if ((area.bottom - area.top + 1) * (area.right - area.left + 1) > MAX_CELLS)
      throw new Error(`The part to print holds more than ${MAX_CELLS} cells; choose a smaller one.`);
    this.find = cellFinder(sheet);
    const hiddenRows = new Set(sheet.rows.flatMap(({ row, hidden }) => (hidden ? [row] : [])));
    const isHidden = (column: number): boolean =>
      sheet.columns.some(({ first, last, hidden }) => hidden && column >= first && column <= last);
    this.rows = between(area.top, area.bottom).filter((row) => !hiddenRows.has(row));
    this.columns = between(area.left, area.right).filter((column) => !isHidden(column));
    this.widths = new Map(this.columns.map((column) => [column, this.widthOf(column)]));
    const heights = new Map(sheet.rows.map(({ row, height }) => [row, height]));
    this.heights = new Map(
      this.rows.map((row) => [row, rowPixels(heights.get(row) ?? sheet.defaultRowHeight)]),
    );
    this.lines = linesOf(sheet);
    this.hang();
  }

  /** Drawings of the area hang on the row that they begin in, so that they stay there however rows grow. */
  private hang(): void {
    const { area } = this.options;
    for (const one of placedDrawings(this.workbook, this.sheet, this.lines)) {
      const under = areaUnder(one.box, this.sheet);
      const row = this.rows.find((visible) => visible >= under.top);
      if (row === undefined || !areaContains(area, under.top, under.left)) continue;
      this.drawings.set(row, [...(this.drawings.get(row) ?? []), one]);
    }
  }

  private over(row: number): string {
    const { area, headings, look } = this.options;
    const left = this.lines.left(area.left) - (headings ? HEADING : 0);
    const top = this.lines.top(row);
    return (this.drawings.get(row) ?? [])
      .map(({ drawing, box }) => {
        const svg = drawingSvg(this.workbook, drawing, box, look ? { look } : {});
        return `<div class="over" style="left:${box.left - left}px;top:${box.top - top}px">${svg}</div>`;
      })
      .join('');
  }

  write(): SheetTable {
    const { titleRows, headings, gridlines } = this.options;
    const isTitle = (row: number): boolean =>
      titleRows !== undefined && row >= titleRows.first && row <= titleRows.last;
    const head = this.rows.filter(isTitle);
    const body = this.rows.filter((row) => !isTitle(row));
    const rows = (list: readonly number[]): string => list.map((row) => this.row(row)).join('\n');
    const columns = this.columns.map((column) => `<col style="width:${this.widths.get(column) ?? 0}px">`);
    const letters = headings
      ? `<tr class="letters" style="height:${LETTERS}px"><th></th>${this.columns.map((column) => `<th>${columnLetters(column)}</th>`).join('')}</tr>\n`
      : '';
    const [edge, top] = headings ? [HEADING, LETTERS] : [0, 0];
    const width = edge + sum(this.widths.values());
    const thead = letters + rows(head);
    const table = [
      `<table class="sheet${gridlines ? ' gridlines' : ''}" style="width:${width}px">`,
      `<colgroup>${headings ? `<col style="width:${edge}px">` : ''}${columns.join('')}</colgroup>`,
      ...(thead === '' ? [] : [`<thead>${thead}</thead>`]),
      `<tbody>${rows(body)}</tbody>`,
      '</table>',
    ].join('\n');
    const css = [
      ...[...this.classes].map(([declarations, name]) => `.${name} { ${declarations} }`),
      ...(this.drawings.size > 0 ? [OVER] : []),
    ].join('\n');
    return { html: `<style>${css}</style>\n${table}`, width, height: top + sum(this.grown.values()) };
  }

  private row(row: number): string {
    const cells = this.columns.map((column) => this.cell(row, column)).join('');
    const number = this.options.headings ? `<th>${row + 1}</th>` : '';
    const over = this.over(row);
    // A drawing stands in a cell that takes no room: a table holds nothing else.
    const holder = over === '' ? '' : `<td class="holder">${over}</td>`;
    return `<tr style="height:${this.heights.get(row) ?? 0}px"${over === '' ? '' : ' class="under"'}>${number}${cells}${holder}</tr>`;
  }

  private cell(row: number, column: number): string {
    const merge = this.sheet.merges.find((one) => areaContains(one, row, column));
    const rows = merge ? this.rows.filter((one) => one >= merge.top && one <= merge.bottom) : [row];
    const columns = merge ? this.columns.filter((one) => one >= merge.left && one <= merge.right) : [column];
    if (rows[0] !== row || columns[0] !== column) return '';
    const [top, left] = merge ? [merge.top, merge.left] : [row, column];
    const cell = this.find(top, left);
    const value = this.valueAt(top, left);
    const own = this.workbook.styles[cell?.style ?? this.styleOfEmpty(row, column)];
    if (!own) return '<td></td>';
    const goesOn = this.options.cutsAtEdge === true && merge !== undefined && !columns.includes(merge.right);
    const style = goesOn ? { ...own, wrap: false } : own;
    const attributes = this.options.attributes?.(top, left) ?? '';
    const overlays = this.options.overlays?.(this.sheet, top, left) ?? [];
    const width = columns.reduce((total, one) => total + (this.widths.get(one) ?? 0), 0);
    const size = style.font.size * (style.font.bold ? 1.08 : 1);
    const room = width - PADDING;
    const numberFormat =
      overlays.find((one) => one.numberFormat !== undefined)?.numberFormat ?? style.numberFormat;
    const isAs = (share: number) => (text: string) => textWidth(text, size) * share <= room || style.wrap;
    // On paper nobody can widen a column: a number that is a little too wide is set smaller, and a text is broken. One
    // without a format has as many decimals as fit, as on the screen.
    const isCut =
      typeof value === 'number' && numberFormat === 'General' && generalText(value, isAs(1)) !== undefined;
    const fits = isAs(isCut ? 1 : SMALLEST);
    const { text: standard, color } = shownText(value, numberFormat, fits, this.workbook.date1904);
    const hasOwnSign =
      this.options.decimalComma === true && typeof value === 'number' && !isDateFormat(numberFormat);
    const text = hasOwnSign ? withComma(standard) : standard;
    if (rows.length === 1) this.grow(row, style, text, width);
    const spans = `${rows.length > 1 ? ` rowspan="${rows.length}"` : ''}${columns.length > 1 ? ` colspan="${columns.length}"` : ''}`;
    const wide = textWidth(text, size) / room;
    const flows = typeof value === 'string' && !style.wrap && this.hasRoom(row, columns.at(-1) ?? column);
    const css = [
      cellCss(style, overlays),
      `text-align: ${alignment(style, value)}`,
      color === undefined ? '' : `color: ${color}`,
      typeof value === 'number' && wide > 1
        ? `font-size: ${(Math.max(SMALLEST, 1 / wide) * style.font.size).toFixed(1)}pt`
        : '',
      typeof value === 'string' && wide > 1 && !flows && !goesOn
        ? 'white-space: pre-wrap; overflow-wrap: anywhere'
        : '',
    ]
      .filter(Boolean)
      .join('; ');
    return `<td class="${this.className(css)}${flows ? ' flows' : ''}"${spans}${attributes === '' ? '' : ` ${attributes}`}>${escapeHtml(text)}</td>`;
  }

  private grow(row: number, { wrap, font }: CellStyle, text: string, width: number): void {
    const lines = wrap
      ? Math.max(1, Math.ceil((text.length * font.size * WIDE_LETTER) / (width - PADDING)))
      : 1;
    const needed = text === '' ? 0 : lines * font.size * LINE;
    this.grown.set(row, Math.max(this.grown.get(row) ?? this.heights.get(row) ?? 0, needed));
  }

  private valueAt(row: number, column: number): Cell['value'] {
    const now = this.options.value?.(this.sheet, row, column);
    return now === undefined ? (this.find(row, column)?.value ?? null) : now;
  }

  /** Text runs over into the next cell where that is empty. */
  private hasRoom(row: number, column: number): boolean {
    return this.valueAt(row, column + 1) === null;
  }

  private className(css: string): string {
    const name = this.classes.get(css) ?? `${this.options.prefix}c${this.classes.size}`;
    this.classes.set(css, name);
    return name;
  }

  private widthOf(column: number): number {
    const run = this.sheet.columns.find(({ first, last }) => column >= first && column <= last);
    return columnPixels(run?.width ?? this.sheet.defaultColumnWidth);
  }

  private styleOfEmpty(row: number, column: number): number {
    const ofRow = this.sheet.rows.find((one) => one.row === row)?.style;
    return (
      ofRow ?? this.sheet.columns.find(({ first, last }) => column >= first && column <= last)?.style ?? 0
    );
  }
}

const between = (first: number, last: number): number[] =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);

function sum(values: Iterable<number>): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}
