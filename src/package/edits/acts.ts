import type { Area } from '../../cells/address';
import type { ConditionalFormat, Validation } from '../model';

/** What a person can set of a workbook beside its cells and its structure. Rows and columns count from zero. */
export type WorkbookEdit =
  /** `was` is the name that it had, where it had one. Without `sheet` the whole workbook knows it. */
  | {
      readonly do: 'setName';
      readonly name: string;
      /** Without leading `=`. */
      readonly formula: string;
      readonly was?: string;
      readonly sheet?: string;
    }
  | { readonly do: 'deleteName'; readonly name: string; readonly sheet?: string }
  | {
      readonly do: 'setNote';
      readonly sheet: string;
      readonly row: number;
      readonly column: number;
      /** `null` takes it away. */
      readonly text: string | null;
    }
  /** Takes the place of every rule that lay on these cells; `null` leaves them without one. */
  | {
      readonly do: 'setEntryRule';
      readonly sheet: string;
      readonly area: Area;
      readonly rule: EntryRule | null;
    }
  | { readonly do: 'addColorRule'; readonly sheet: string; readonly rule: ColorRule }
  /** The rule of a sheet by its place in `Sheet.conditionalFormats`. */
  | { readonly do: 'deleteColorRule'; readonly sheet: string; readonly index: number }
  /**
   * Rows whose cell of a column shows none of the texts are hidden; the first row of the area is its heading. What
   * other columns of the same filter ask for stays.
   */
  | {
      readonly do: 'setFilter';
      readonly sheet: string;
      /** The table whose own filter is meant; absent = that of the sheet. */
      readonly table?: string;
      readonly area: Area;
      /** By its place in the area. */
      readonly column: number;
      /** Null = all that the column shows. */
      readonly shows: readonly string[] | null;
      /** All rows that the whole filter hides. */
      readonly hidden: readonly number[];
    }
  | { readonly do: 'clearFilter'; readonly sheet: string; readonly table?: string };

/** Formulas are relative to the first cell. */
export type EntryRule = Omit<Validation, 'areas' | 'showsArrow'>;
export type ColorRule = Pick<ConditionalFormat, 'areas' | 'kind' | 'operator' | 'formulas'> & {
  readonly style: Partial<ConditionalFormat['style']>;
};
