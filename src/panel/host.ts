import type { CellValue } from '../call/cell';

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
}

/** What is written to a cell: a value, a formula with its `=`, or null to clear it. */
export type CellInput = number | string | boolean | null;

/** The workbook that the panel stands beside, as much of it as the panel needs. */
export interface Host {
  /** The selected cells, the active one first in mind: `row` and `column` are its place when one cell is chosen. */
  readSelection(): Promise<Range | undefined>;
  /** Calls back when another cell is selected, and when what the selected cell shows has changed. */
  onSelectionChange(listener: () => void): () => void;
  read(range: Range): Promise<CellView[][]>;
  /** The range is as large as the cells given, from its first row and column. */
  write(range: Range, cells: readonly (readonly CellInput[])[]): Promise<void>;
  /** Calculates what depends on the cells written, and waits for it. */
  recalculate(): Promise<void>;
  /** Adds an empty sheet in front; gives the name it got, which differs where the wanted one is taken. */
  addSheet(name: string): Promise<string>;
  /** Starts editing the selected cell with this text, the cursor at its end. */
  insertFormula(text: string): Promise<void>;
}
