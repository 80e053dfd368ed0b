import type { WorksheetFunction } from '../call/worksheetFunction';
import { Refusal } from '../core/refusal';
import type { CellInput, CellView, Range } from '../workbook/cells';
import { Book } from '../sheet/book';
import type { Limits } from '../sheet/budget';
import { contentOf } from '../workbook/content';
import { areaContains, MAX_COLUMNS } from '../cells/address';
import { cellFinder } from '../package/model';
import type { Area } from '../cells/address';
import type { Cell, Workbook } from '../package/model';

import { between } from './between';
import { isSameName } from './plan';
import type { CellRef } from './plan';
import type { TrialCells } from './run';

/** Milliseconds. */
const PAUSE_EVERY = 30;

/**
 * A copy of a workbook to try values in, so that the workbook itself never holds a varied value. The values in it must
 * be up to date: until something is written, they are what is read. Dispose of it when done.
 */
export class WorkbookCopy implements TrialCells {
  private readonly sheets: readonly SheetCopy[];
  private readonly written = new Map<string, CellInput>();
  private focused: Book | undefined;
  private paused = 0;

  constructor(
    private readonly workbook: Workbook,
    private readonly functions: readonly WorksheetFunction[],
    private readonly limits?: Limits,
  ) {
    this.sheets = workbook.sheets.map((sheet) => ({
      find: cellFinder(sheet),
      spills: sheet.cells.flatMap(({ spill }) => (spill ? [spill] : [])),
    }));
  }

  focus(inputs: readonly CellRef[], read: readonly CellRef[]): void {
    this.focused = new Book(contentOf(between(this.workbook, inputs, read)), this.functions);
    this.focused.calculate(this.limits);
  }

  read({ sheet, row, column, rows, columns }: Range): Promise<CellView[][]> {
    const index = this.indexOf(sheet);
    return Promise.resolve(
      Array.from({ length: rows }, (_, down) =>
        Array.from({ length: columns }, (__, across) => this.view(index, row + down, column + across)),
      ),
    );
  }

  write({ sheet, row, column }: Range, cells: readonly (readonly CellInput[])[]): Promise<void> {
    const index = this.indexOf(sheet);
    cells.forEach((line, down) => {
      line.forEach((content, across) => {
        this.put(index, row + down, column + across, content);
      });
    });
    return Promise.resolve();
  }

  async recalculate(): Promise<void> {
    // Thousands of variations must leave a page its moments to paint and to hear a person.
    if (performance.now() - this.paused > PAUSE_EVERY) {
      await new Promise((resolve) => setTimeout(resolve));
      this.paused = performance.now();
    }
    if (this.written.size > 0) this.focused?.calculate(this.limits);
  }

  dispose(): void {
    this.focused = undefined;
  }

  private put(sheet: number, row: number, column: number, content: CellInput): void {
    const key = keyOf(sheet, row, column);
    const { formula, value } = this.original(sheet, row, column);
    if (Object.is(content, formula === '' ? value : formula)) this.written.delete(key);
    else this.written.set(key, content);
    // A formula that comes back is there already: with nothing else written, the copy reads as it was made.
    if (typeof content === 'string' && content.startsWith('=')) return;
    this.focused?.set([{ sheet, row, column, value: content }]);
  }

  private view(sheet: number, row: number, column: number): CellView {
    const written = this.written.get(keyOf(sheet, row, column));
    if (written !== undefined) return { formula: '', value: written };
    const original = this.original(sheet, row, column);
    if (this.written.size === 0 || !this.focused) return original;
    return { ...original, value: this.focused.value(sheet, row, column) };
  }

  private original(sheet: number, row: number, column: number): CellView {
    const { find, spills } = this.sheets[sheet] as SheetCopy;
    const cell = find(row, column);
    const spilled = cell?.formula === undefined && spills.some((area) => areaContains(area, row, column));
    return {
      formula: cell?.formula === undefined ? '' : `=${cell.formula}`,
      value: cell?.value ?? null,
      ...(spilled && { spilled }),
    };
  }

  private indexOf(name: string): number {
    const index = this.workbook.sheets.findIndex((sheet) => isSameName(sheet.name, name));
    if (index < 0) throw new Refusal(`The workbook has no sheet "${name}".`);
    return index;
  }
}

interface SheetCopy {
  readonly find: (row: number, column: number) => Cell | undefined;
  readonly spills: readonly Area[];
}

const keyOf = (sheet: number, row: number, column: number): string =>
  `${sheet} ${row * MAX_COLUMNS + column}`;
