/** What the Sheet tab does to the workbook on show. */
import {
  areaAddress,
  areaContains,
  areasOverlap,
  cellAddress,
  MAX_COLUMNS,
  MAX_ROWS,
  type Area,
} from '../../cells/address';
import type { CellValue } from '../../cells/value';
import type { Sheet, Workbook } from '../../package/model';
import { shownText } from '../../render/shownText';
import { isFound, replaced, type Search } from '../findCells';
import { filterAt, filtersOf, type OwnFilter } from '../filterArrows';
import type { Grid } from '../grid';
import type { SheetPlace } from '../heldEntries';
import type { GridCell } from '../gridCells';
import { pastedCell } from '../pasteTable';
import type { Session } from '../session';
import type { PageAct } from '../structureActs';
import type { WrittenCell, WrittenCells } from '../writeCells';
import { blocked, leftBehind } from './inTheWay';
import { formulaCell, sortedCells, sortedOrder, turnedCells, valueCell, type SourceRow } from './rearrange';

export interface Selection {
  readonly sheet: string;
  readonly area: Area;
}

export interface Found extends SheetPlace {
  readonly address: string;
  readonly text: string;
}

const MOST_FOUND = 500;

export class SheetDesk {
  private last: Selection | undefined;

  constructor(
    private readonly session: Session,
    private readonly grid: Grid,
  ) {}

  readonly subscribe = (listener: () => void): (() => void) => {
    const stops = [this.session.subscribe(listener), this.grid.onLook(listener)];
    return () => {
      stops.forEach((stop) => {
        stop();
      });
    };
  };

  /** The same object as long as the same cells are selected. */
  readonly selection = (): Selection | undefined => {
    if (this.session.state.busy) return this.last;
    const now = this.grid.selected();
    if (JSON.stringify(now) !== JSON.stringify(this.last)) this.last = now;
    return this.last;
  };

  readonly workbook = (): Workbook => this.session.workbook;

  sheet(name: string): Sheet | undefined {
    return this.workbook().sheets.find((one) => one.name === name);
  }

  apply(...acts: PageAct[]): void {
    void this.session.change(acts);
  }

  select(place: SheetPlace): void {
    this.grid.select(place.sheet, place.row, place.column);
  }

  toCorner(which: 'first' | 'last'): void {
    if (!this.session.state.busy) this.grid.toCorner(which);
  }

  redraw(): void {
    this.grid.redraw();
  }

  setNumberFormat({ sheet, area }: Selection, format: string): void {
    this.range(sheet, area).setNumberFormat(format);
  }

  freezeAt({ sheet, area }: Selection): void {
    const on = this.grid.sheet(sheet);
    const { top: ySplit, left: xSplit } = area;
    on.setFreeze({ xSplit, ySplit, startRow: ySplit || -1, startColumn: xSplit || -1 });
  }

  /** Why not, where it cannot be done. */
  sort(
    { sheet, area }: Selection,
    column: number,
    descending: boolean,
    hasHeading: boolean,
  ): string | undefined {
    const rows = this.used(sheet, { ...area, top: area.top + (hasHeading ? 1 : 0) });
    if (!rows || rows.bottom <= rows.top) return 'Select the rows to sort, several of them.';
    const problem = blocked(rows, this.merges(sheet), this.spills(sheet));
    if (problem !== undefined) return problem;
    const own = this.grid.sheet(sheet).getSheet();
    // Rows that a filter or a person has hidden stay where they are.
    const lines = this.lines(sheet, rows).filter(({ row }) => own.getRowVisible(row));
    const order = sortedOrder(lines, column - rows.left, descending);
    if (!order) return undefined;
    const moved = new Set(order.flatMap((from, to) => (from === to ? [] : [lines[to]?.row])));
    const opened = this.sheet(sheet);
    const behind = opened && leftBehind(opened, rows, (row) => moved.has(row));
    if (behind !== undefined) return behind;
    const kept = this.keptFormula(sheet, rows);
    if (kept !== undefined)
      return `The formula in ${kept} cannot be calculated here, and its value would be lost: sort without it.`;
    this.grid.write(new Map([[sheet, sortedCells(lines, order, rows.left)]]));
    return undefined;
  }

  /** The values of the selection, turned, from a cell on. Why not, where it cannot be done. */
  transpose(
    { sheet, area }: Selection,
    to: { readonly row: number; readonly column: number },
  ): string | undefined {
    const source = this.used(sheet, area);
    if (!source) return 'Select the cells to turn.';
    const target = {
      top: to.row,
      left: to.column,
      bottom: to.row + source.right - source.left,
      right: to.column + source.bottom - source.top,
    };
    if (target.bottom >= MAX_ROWS || target.right >= MAX_COLUMNS)
      return 'The turned cells would leave the sheet.';
    const problem = blocked(target, this.merges(sheet), this.spills(sheet));
    if (problem !== undefined) return problem;
    this.grid.write(new Map([[sheet, turnedCells(this.lines(sheet, source), to)]]));
    return undefined;
  }

  /** Puts the results in the place of their formulas; a result of several cells as a whole. */
  keepValues({ sheet, area }: Selection): void {
    const cells = this.grid.cells(sheet);
    const used = this.used(sheet, area);
    const areas = this.spills(sheet).filter((one) => areasOverlap(one, area));
    const written: WrittenCells = {};
    for (const one of used ? [used, ...areas] : areas) {
      for (const row of span(one.top, one.bottom)) {
        for (const column of span(one.left, one.right)) {
          const { value, formula, spilled } = cells.read(row, column);
          if (formula !== undefined || spilled) (written[row] ??= {})[column] = valueCell(value);
        }
      }
    }
    this.grid.write(new Map([[sheet, written]]));
  }

  /** The part of an area that holds something. */
  private used(sheet: string, area: Area): Area | undefined {
    const places = this.grid.cells(sheet).places();
    let [bottom, right] = [-1, -1];
    for (const { row, column } of places) {
      if (!areaContains(area, row, column)) continue;
      bottom = Math.max(bottom, row);
      right = Math.max(right, column);
    }
    return bottom < 0 ? undefined : { ...area, bottom, right };
  }

  private lines(sheet: string, { top, left, bottom, right }: Area): SourceRow[] {
    const cells = this.grid.cells(sheet);
    return span(top, bottom).map((row) => ({
      row,
      cells: span(left, right).map((column) => {
        const { value, formula } = cells.read(row, column);
        return { value, ...(formula !== undefined && { formula }), look: cells.data(row, column)?.s };
      }),
    }));
  }

  private merges(sheet: string): Area[] {
    return this.grid
      .sheet(sheet)
      .getSheet()
      .getMergeData()
      .map(({ startRow, startColumn, endRow, endColumn }) => ({
        top: startRow,
        left: startColumn,
        bottom: endRow,
        right: endColumn,
      }));
  }

  private spills(sheet: string): Area[] {
    const { calculation } = this.grid;
    return calculation
      .spills()
      .flatMap(({ sheet: at, area }) => (this.grid.sheetName(at) === sheet ? [area] : []));
  }

  /** A cell that shows the value of the file, since its formula is not known here. */
  private keptFormula(sheet: string, { top, left, bottom, right }: Area): string | undefined {
    const cells = this.grid.cells(sheet);
    for (const row of span(top, bottom))
      for (const column of span(left, right))
        if (cells.keptReason(row, column) !== undefined) return cellAddress(row, column);
    return undefined;
  }

  /** Calls back when a person asks for a column of a filter: by its arrow, or by Alt+Down on its heading. */
  onFilterAsked(listener: () => void): () => void {
    const heard = (event: KeyboardEvent) => {
      if (!event.altKey || event.key !== 'ArrowDown' || this.session.state.busy) return;
      const { sheet, row, column } = this.grid.place();
      if (!filterAt(this.sheet(sheet), row, column)) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      listener();
    };
    this.grid.opensFilter = listener;
    window.addEventListener('keydown', heard, true);
    return () => {
      this.grid.opensFilter = undefined;
      window.removeEventListener('keydown', heard, true);
    };
  }

  /** Calls back when a person asks for a form in the menu of a cell. */
  onFormAsked(listener: () => void): () => void {
    this.grid.asksForm = listener;
    return () => {
      this.grid.asksForm = undefined;
    };
  }

  /** What the cells below the heading of a column show. */
  shownIn(sheet: string, area: Area, column: number): { readonly row: number; readonly text: string }[] {
    const cells = this.grid.cells(sheet);
    return span(area.top + 1, area.bottom).map((row) => ({ row, text: this.shown(cells.read(row, column)) }));
  }

  private shown({ value, style }: GridCell): string {
    const { styles, date1904 } = this.workbook();
    const look = typeof style === 'number' ? styles[style] : style;
    return shownText(value, look?.numberFormat ?? 'General', () => true, date1904).text;
  }

  /** The filter that a selection is in, else that of the sheet; and the cells, of which table, that one would work on. */
  filterFor(
    name: string,
    selected: Area,
  ): { readonly present?: OwnFilter; readonly area: Area; readonly table?: string } {
    const sheet = this.sheet(name);
    const filters = sheet ? filtersOf(sheet) : [];
    const inside = filters.find(({ area }) => areaContains(area, selected.top, selected.left));
    if (inside)
      return {
        present: inside,
        area: inside.area,
        ...(inside.table !== undefined && { table: inside.table }),
      };
    const own = sheet?.filter;
    const present = own && { present: own };
    const table = sheet?.tables.find(({ area, hasHeader }) => hasHeader && areasOverlap(area, selected));
    if (!table) return { ...present, area: selected };
    const { area, hasTotals } = table;
    return { area: { ...area, bottom: area.bottom - Number(hasTotals) }, table: table.name };
  }

  /** Rows whose cell of a column shows none of the texts are hidden, with those that other columns hide; null = all. */
  setFilter(
    sheet: string,
    table: string | undefined,
    area: Area,
    column: number,
    shows: readonly string[] | null,
  ): void {
    const opened = this.sheet(sheet);
    const { rows = [] } = opened ?? {};
    const filter = opened && filtersOf(opened).find((one) => one.table === table);
    const before = filter && areaAddress(filter.area) === areaAddress(area) ? filter.columns : [];
    const hiddenBy = (at: number, texts: readonly string[]): number[] => {
      const stay = new Set(texts);
      return this.shownIn(sheet, area, area.left + at).flatMap(({ row, text }) =>
        stay.has(text) ? [] : [row],
      );
    };
    const told = new Set(
      before.flatMap(({ column: at, shows: texts }) => (texts ? hiddenBy(at, texts) : [])),
    );
    // What is filtered in a way that is not known here stays hidden.
    const otherwise = before.some((one) => one.shows === undefined && one.column !== column)
      ? rows.filter(({ row, hidden }) => hidden && row > area.top && row <= area.bottom && !told.has(row))
      : [];
    const now = [...before.filter((one) => one.column !== column), ...(shows ? [{ column, shows }] : [])];
    const hidden = new Set([
      ...otherwise.map(({ row }) => row),
      ...now.flatMap(({ column: at, shows: texts }) => (texts ? hiddenBy(at, texts) : [])),
    ]);
    const whose = table !== undefined && { table };
    this.apply({ do: 'setFilter', sheet, ...whose, area, column, shows, hidden: [...hidden] });
  }

  find(search: Search, onlySheet: string | undefined): Found[] {
    const found: Found[] = [];
    for (const { sheet, row, column, ...cell } of this.places(onlySheet)) {
      if (!isFound(cell, search)) continue;
      const text = search.inFormulas && cell.formula !== undefined ? `=${cell.formula}` : cell.shown();
      found.push({ sheet, row, column, address: cellAddress(row, column), text });
      if (found.length === MOST_FOUND) break;
    }
    return found;
  }

  /** How many cells were changed: all of them with one step to undo. */
  replaceAll(search: Search, by: string, onlySheet: string | undefined): number {
    const sheets = new Map<string, WrittenCells>();
    let count = 0;
    for (const one of this.places(onlySheet)) {
      if (one.spilled || !isFound(one, search)) continue;
      const text = replaced(one, search, by);
      const written = text === undefined ? undefined : entered(text, one.value);
      if (!written) continue;
      count++;
      const cells = sheets.get(one.sheet) ?? {};
      sheets.set(one.sheet, cells);
      (cells[one.row] ??= {})[one.column] = written;
    }
    if (count > 0) this.grid.write(sheets);
    return count;
  }

  private places(onlySheet: string | undefined) {
    return this.workbook().sheets.flatMap(({ name, state }) => {
      if (state !== 'visible' || (onlySheet !== undefined && name !== onlySheet)) return [];
      const cells = this.grid.cells(name);
      return cells
        .places()
        .sort((a, b) => a.row - b.row || a.column - b.column)
        .map(({ row, column }) => {
          const cell = cells.read(row, column);
          return { sheet: name, row, column, ...cell, shown: () => this.shown(cell) };
        });
    });
  }

  private range(sheet: string, { top, left, bottom, right }: Area) {
    return this.grid.sheet(sheet).getRange(top, left, bottom - top + 1, right - left + 1);
  }
}

const span = (first: number, last: number): number[] =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => first + at);

/** A text as it would be typed; what was text stays text. Undefined where a number would become none. */
function entered(text: string, before: CellValue): WrittenCell | undefined {
  if (text.startsWith('=')) return formulaCell(text.slice(1));
  if (typeof before === 'string') return valueCell(text);
  if (text === '') return valueCell(null);
  const { v, ...more } = pastedCell(text);
  return typeof v === 'string' ? undefined : { ...more, v };
}
