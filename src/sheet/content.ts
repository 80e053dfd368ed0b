/** A workbook as its calculation takes it: what `src/package` reads from a file fits. */
import type { Area } from '../cells/address';
import type { CellValue } from '../cells/value';

export interface BookCell {
  readonly row: number;
  readonly column: number;
  /** What was typed, or what the file holds as the formula's value. */
  readonly value: CellValue;
  /** Without its `=`. */
  readonly formula?: string;
  /** The cells that the formula's result fills: it may spill. */
  readonly spill?: Area;
  /** An old array formula: it fills just these cells. */
  readonly fixedArray?: true;
}

export interface BookTable {
  readonly name: string;
  readonly area: Area;
  readonly hasHeader: boolean;
  readonly hasTotals: boolean;
  readonly columns: readonly string[];
}

export interface BookSheet {
  readonly name: string;
  readonly cells: readonly BookCell[];
  readonly tables: readonly BookTable[];
  readonly rows: readonly { readonly row: number; readonly hidden: boolean }[];
  /** Cells joined into one: no result spills into them. */
  readonly merges?: readonly Area[];
  /** Whether a cell is in a date format: a thread or a fraction typed there may have become a date. */
  readonly isDate?: (row: number, column: number) => boolean;
  /** Areas in which hidden rows are hidden by a filter. */
  readonly filters?: readonly Area[];
}

export interface BookName {
  readonly name: string;
  /** Without its `=`. */
  readonly formula: string;
  /** The sheet that alone knows the name. */
  readonly sheet?: string;
}

export interface BookContent {
  readonly sheets: readonly BookSheet[];
  readonly names: readonly BookName[];
  readonly date1904: boolean;
  /** Circles are meant, and calculated round and round: their stored values are kept. */
  readonly iterates?: boolean;
  /** Excel on a Macintosh calculated the stored values: its CHAR and CODE go by another table of characters. */
  readonly isFromMacintosh?: boolean;
}
