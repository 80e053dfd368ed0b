/** The cells of a sheet, column by column in blocks of rows: a cell in the last row costs one block. */
import { ArrayValue, type Scalar, type SheetArea } from '../values';
import type { Formula, Range } from './nodes';

/** Stands in the place of a value that is to be calculated. */
export const DIRTY = Symbol('dirty');
export type Stored = Scalar | typeof DIRTY;

const BITS = 8;
export const BLOCK_ROWS = 1 << BITS;
const MASK = BLOCK_ROWS - 1;

export class Block {
  readonly values: Stored[] = new Array<Stored>(BLOCK_ROWS).fill(null);
  /** The formula of a cell, or the one whose result spills into it. */
  formulas: (Formula | undefined)[] | undefined;
  /** The formulas that read a cell by itself. */
  users: (Formula[] | undefined)[] | undefined;
}

export class Column {
  readonly blocks: (Block | undefined)[] = [];
  /** The ranges that cover a block of the column. */
  readonly ranges: (Range[] | undefined)[] = [];
  /** The ranges that cover many blocks. */
  readonly tall: Range[] = [];

  block(row: number): Block {
    return (this.blocks[row >> BITS] ??= new Block());
  }
}

export class SheetCells {
  readonly columns: (Column | undefined)[] = [];
  /** The ranges that cover many columns. */
  readonly wide: Range[] = [];
  /** How many rows from the top hold something. */
  rows = 0;

  column(column: number): Column {
    return (this.columns[column] ??= new Column());
  }

  get(row: number, column: number): Stored {
    return this.columns[column]?.blocks[row >> BITS]?.values[row & MASK] ?? null;
  }

  set(row: number, column: number, value: Stored): void {
    this.column(column).block(row).values[row & MASK] = value;
    if (row >= this.rows) this.rows = row + 1;
  }

  formula(row: number, column: number): Formula | undefined {
    return this.columns[column]?.blocks[row >> BITS]?.formulas?.[row & MASK];
  }

  setFormula(row: number, column: number, formula: Formula | undefined): void {
    const block = this.column(column).block(row);
    if (formula || block.formulas)
      (block.formulas ??= new Array<undefined>(BLOCK_ROWS))[row & MASK] = formula;
  }

  users(row: number, column: number): Formula[] | undefined {
    return this.columns[column]?.blocks[row >> BITS]?.users?.[row & MASK];
  }

  addUser(row: number, column: number, user: Formula): void {
    const block = this.column(column).block(row);
    const users = (block.users ??= new Array<undefined>(BLOCK_ROWS));
    (users[row & MASK] ??= []).push(user);
  }

  removeUser(row: number, column: number, user: Formula): void {
    const users = this.users(row, column);
    const at = users?.indexOf(user) ?? -1;
    if (at >= 0) users?.splice(at, 1);
  }

  /** Visits the cells of an area that hold something, by columns. */
  each(area: SheetArea, visit: (value: Stored, row: number, column: number) => void): void {
    const right = Math.min(area.right, this.columns.length - 1);
    const bottom = Math.min(area.bottom, this.rows - 1);
    for (let column = area.left; column <= right; column++) {
      const blocks = this.columns[column]?.blocks;
      if (!blocks) continue;
      const last = Math.min(bottom >> BITS, blocks.length - 1);
      for (let at = area.top >> BITS; at <= last; at++) {
        const block = blocks[at];
        if (!block) continue;
        const base = at << BITS;
        const from = Math.max(area.top - base, 0);
        const to = Math.min(bottom - base, MASK);
        for (let row = from; row <= to; row++) {
          const value = block.values[row] as Stored;
          if (value !== null) visit(value, base + row, column);
        }
      }
    }
  }

  /** An area as an array, once all in it is calculated. Rows below the used ones are its tail. */
  array(area: SheetArea): ArrayValue {
    const rows = area.bottom - area.top + 1;
    const columns = area.right - area.left + 1;
    const used = Math.max(0, Math.min(rows, this.rows - area.top));
    const cells = new Array<Scalar>(used * columns).fill(null);
    this.each(area, (value, row, column) => {
      cells[(row - area.top) * columns + column - area.left] = value as Scalar;
    });
    return new ArrayValue(rows, columns, cells);
  }
}
