import type { CellValue } from '../cells/value';

/** Cells of one sheet; rows and columns count from 0. */
export interface Range {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface CellView {
  /** With its `=`; empty where the cell holds a plain value or is part of another cell's spill. */
  readonly formula: string;
  /** An error carries the message of the function that refused, where one did. */
  readonly value: CellValue;
  /** Filled by the formula of another cell. */
  readonly spilled?: true;
  /** Why the value of the file stands here, where the formula could not be calculated. */
  readonly kept?: string;
}

/** What is written to a cell: a value, a formula with its `=`, or null to clear it. */
export type CellInput = number | string | boolean | null;

/** A workbook that can be read, changed and calculated, wherever it is. */
export interface WorkbookCells {
  read(range: Range): Promise<CellView[][]>;
  /** The range is as large as the cells given, from its first row and column. */
  write(range: Range, cells: readonly (readonly CellInput[])[]): Promise<void>;
  /** Calculates what depends on the cells written, and waits for it. */
  recalculate(): Promise<void>;
}
