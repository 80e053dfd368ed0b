import type { Area } from '../cells/address';
import type { CellValue } from '../cells/value';
import type { System } from '../core/quantity';
import type { Place } from './plan';

/** What a plan must know of the workbook that it is for, wherever that is. */
export interface Ground {
  readonly sheet: string;
  /** The cell of the sheet that says `in` or `mm`. */
  readonly units?: Place & { readonly system: System; readonly name?: string };
  /** A cell of the area that holds something, or belongs to a merged area or a table; the first of them. */
  filled(area: Area): Place | undefined;
  /** The first cell of the area that must not be changed since the sheet is protected. */
  locked(area: Area): Place | undefined;
  /** Whether a heading of forms stands above, in these columns. */
  hasHeads(column: number, above: number): boolean;
  /** Whether the workbook has the name; in lower case. */
  isTaken(name: string): boolean;
  /** Named cells of the workbook. */
  readonly inputs: readonly KnownInput[];
  /** Characters of a column in which something stands; undefined for one that is empty. */
  width(column: number): number | undefined;
  readonly lists: {
    readonly sheet: string;
    readonly present: readonly { readonly title: string; readonly column: number; readonly words: number }[];
    /** The first empty column. */
    readonly free: number;
  };
}

/** A named cell that may be an input of a form. */
export interface KnownInput extends Place {
  readonly name: string;
  readonly sheet: string;
  readonly value: CellValue;
  /** It holds what was typed, no formula. */
  readonly isTyped: boolean;
  /** The text right of it, where forms have the unit. */
  readonly unit: string;
}
