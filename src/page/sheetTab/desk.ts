/** What the Sheet tab does to the workbook on show. */
import { ICommandService, type ICellData } from '@univerjs/core';
import { SetRangeValuesCommand } from '@univerjs/preset-sheets-core';
import { areaAddress, areasOverlap, cellAddress, type Area } from '../../cells/address';
import type { CellValue } from '../../cells/value';
import type { Sheet, Workbook } from '../../package/model';
import { shiftFormula } from '../../package/shiftFormula';
import { shownText } from '../../render/shownText';
import { parseNumber } from '../entryNumbers';
import { isFound, replaced, type Search } from '../findCells';
import { isHeading } from '../filterArrows';
import type { Grid, SheetPlace } from '../grid';
import { gridScalar } from '../gridData';
import type { Session } from '../session';
import { sortedPlaces } from '../sortRows';
import type { PageAct } from '../structureActs';

export interface Selection {
  readonly sheet: string;
  readonly area: Area;
}

export interface Found extends SheetPlace {
  readonly address: string;
  readonly text: string;
}

type Written = Pick<ICellData, 'v' | 't' | 's'> & { f?: string | null; si?: null; p?: null };
type Cells = Record<number, Record<number, Written>>;

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
    const rows = { ...area, top: area.top + (hasHeading ? 1 : 0) };
    if (rows.bottom <= rows.top) return 'Select the rows to sort, several of them.';
    const merged = this.sheet(sheet)?.merges.some((one) => areasOverlap(one, rows));
    if (merged) return 'Merged cells cannot be sorted: part them first.';
    const cells = this.grid.cells(sheet);
    const lines = span(rows.top, rows.bottom).map((row) =>
      span(rows.left, rows.right).map((at) => ({ row, ...cells.read(row, at), own: cells.data(row, at)?.s })),
    );
    if (lines.flat().some(({ spill, spilled }) => spill ?? spilled))
      return 'Results that fill several cells cannot be sorted: sort what they are made of.';
    const order = sortedPlaces(
      lines.map((line) => line[column - rows.left]?.value ?? null),
      descending,
    );
    const written: Cells = {};
    order.forEach((from, to) => {
      const line: Record<number, Written> = {};
      lines[from]?.forEach(({ row, value, formula, own }, at) => {
        const style = { s: own ?? null } as Pick<ICellData, 's'>;
        line[rows.left + at] =
          formula === undefined
            ? { ...typed(value), ...style }
            : {
                f: `=${shiftFormula(formula, rows.top + to - row, 0)}`,
                v: null,
                si: null,
                p: null,
                ...style,
              };
      });
      written[rows.top + to] = line;
    });
    this.write(sheet, written);
    return undefined;
  }

  /** The values of the selection, turned, from a cell on. */
  transpose({ sheet, area }: Selection, to: { readonly row: number; readonly column: number }): void {
    const cells = this.grid.cells(sheet);
    const written: Cells = {};
    for (const row of span(area.top, area.bottom)) {
      for (const column of span(area.left, area.right)) {
        const line = (written[to.row + column - area.left] ??= {});
        line[to.column + row - area.top] = typed(cells.read(row, column).value);
      }
    }
    this.write(sheet, written);
  }

  /** Puts the results in the place of their formulas. */
  keepValues({ sheet, area }: Selection): void {
    const cells = this.grid.cells(sheet);
    const written: Cells = {};
    for (const row of span(area.top, area.bottom)) {
      for (const column of span(area.left, area.right)) {
        const { value, formula, spilled } = cells.read(row, column);
        if (formula !== undefined || spilled) (written[row] ??= {})[column] = typed(value);
      }
    }
    this.write(sheet, written);
  }

  /** Calls back when a person asks for a column of a filter: by its arrow, or by Alt+Down on its heading. */
  onFilterAsked(listener: () => void): () => void {
    const heard = (event: KeyboardEvent) => {
      if (!event.altKey || event.key !== 'ArrowDown' || this.session.state.busy) return;
      const { sheet, row, column } = this.grid.place();
      if (!isHeading(this.sheet(sheet)?.filter, row, column)) return;
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
    const { styles, date1904 } = this.workbook();
    return span(area.top + 1, area.bottom).map((row) => {
      const { value, style } = cells.read(row, column);
      const look = typeof style === 'number' ? styles[style] : style;
      return { row, text: shownText(value, look?.numberFormat ?? 'General', () => true, date1904).text };
    });
  }

  /** Rows whose cell of a column shows none of the texts are hidden, with those that other columns hide; null = all. */
  setFilter(sheet: string, area: Area, column: number, shows: readonly string[] | null): void {
    const { filter, rows = [] } = this.sheet(sheet) ?? {};
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
    this.apply({ do: 'setFilter', sheet, area, column, shows, hidden: [...hidden] });
  }

  find(search: Search, onlySheet: string | undefined): Found[] {
    return this.places(onlySheet)
      .filter((one) => isFound(one, search))
      .slice(0, MOST_FOUND)
      .map(({ sheet, row, column, value, formula }) => ({
        sheet,
        row,
        column,
        address: cellAddress(row, column),
        text: search.inFormulas && formula !== undefined ? `=${formula}` : String(value ?? ''),
      }));
  }

  /** How many cells were changed. */
  replaceAll(search: Search, by: string, onlySheet: string | undefined): number {
    const sheets = new Map<string, Cells>();
    let count = 0;
    for (const one of this.places(onlySheet)) {
      if (one.spilled || !isFound(one, search)) continue;
      const text = replaced(one, search, by);
      if (text === undefined) continue;
      count++;
      const cells = sheets.get(one.sheet) ?? {};
      sheets.set(one.sheet, cells);
      (cells[one.row] ??= {})[one.column] = entered(text, one.value);
    }
    for (const [sheet, cells] of sheets) this.write(sheet, cells);
    return count;
  }

  private places(onlySheet: string | undefined) {
    return this.workbook().sheets.flatMap(({ name, state }) => {
      if (state !== 'visible' || (onlySheet !== undefined && name !== onlySheet)) return [];
      const cells = this.grid.cells(name);
      return cells
        .places()
        .sort((a, b) => a.row - b.row || a.column - b.column)
        .map(({ row, column }) => ({ sheet: name, row, column, ...cells.read(row, column) }));
    });
  }

  private range(sheet: string, { top, left, bottom, right }: Area) {
    return this.grid.sheet(sheet).getRange(top, left, bottom - top + 1, right - left + 1);
  }

  /** One step of undo for all of them. */
  private write(sheet: string, value: Cells): void {
    const { injector, unitId } = this.grid;
    const subUnitId = this.grid.sheet(sheet).getSheetId();
    injector.get(ICommandService).syncExecuteCommand(SetRangeValuesCommand.id, { unitId, subUnitId, value });
  }
}

const span = (first: number, last: number): number[] =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => first + at);

const typed = (value: CellValue): Written => ({ v: null, ...gridScalar(value), f: null, si: null, p: null });

/** A text as it would be typed; what was text stays text. */
function entered(text: string, before: CellValue): Written {
  if (text.startsWith('=')) return { f: text, v: null, si: null, p: null };
  const number = typeof before === 'number' ? parseNumber(text)?.v : undefined;
  return typed(typeof number === 'number' ? number : text);
}
