import type { CellValue, Matrix } from '../cells/value';
import type { StyleDescription } from './styleEditor';

/** The new content of one cell, whole: what is left out is taken away, but for style and note. */
export interface CellChange {
  /** Name of the sheet. */
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** The value typed, or the result of the formula: it is always written, so that the file reads right anywhere. */
  readonly value: CellValue;
  /** In our spelling, without leading `=`. */
  readonly formula?: string;
  /** Every value of the array that the formula fills, from this cell on; left out where it fills this cell only. */
  readonly spill?: Matrix;
  /** Another style: one of the workbook's by its index, or a new one; left out, the present one stays. */
  readonly style?: number | StyleDescription;
  /** A new format code; the rest of the style stays. */
  readonly numberFormat?: string;
  /** A new note; `null` takes the present one away. */
  readonly note?: string | null;
}

/**
 * Later changes of the same cell win. A cell that an array filled until now and does not fill any more is
 * emptied, unless it has a change of its own.
 */
export type Changes = readonly CellChange[];
