/**
 * What is to be written into a sheet, as plain data: a writer for files and one for spreadsheet programs carry it out,
 * and need not know what a form is. Rows and columns count from zero; formulas stand without their `=`.
 */
import type { Area } from '../cells/address';
import type { SheetDescription } from '../package/description';
import type { Look } from './looks';

export interface Place {
  readonly row: number;
  readonly column: number;
}

export interface PlannedCell extends Place {
  readonly value?: string | number;
  readonly formula?: string;
  readonly look: Look;
}

/** What may be typed into a cell. */
export interface PlannedRule extends Place {
  /** Words to choose from, a formula that gives their cells, or one that is true for a good entry. */
  readonly takes:
    { readonly words: readonly string[] } | { readonly cells: string } | { readonly accepts: string };
  /** Whether another entry is refused, or only asked about. */
  readonly strict: boolean;
  readonly title: string;
  readonly text: string;
}

/** A list of words too long for a rule, in a column of the sheet for lists: its title, then the words. */
export interface PlannedList {
  readonly sheet: string;
  readonly column: number;
  readonly title: string;
  readonly words: readonly string[];
}

export interface PlannedName {
  readonly name: string;
  readonly area: Area;
}

export interface FormPlan {
  readonly sheet: string;
  /** All that it fills. */
  readonly area: Area;
  readonly cells: readonly PlannedCell[];
  readonly merges: readonly Area[];
  /** Points, by row. */
  readonly heights: readonly { readonly row: number; readonly points: number }[];
  /** Characters, by column; those that are wide enough are left out. */
  readonly widths: readonly { readonly column: number; readonly characters: number }[];
  readonly rules: readonly PlannedRule[];
  /** Areas whose first cell holds a verdict, to be colored by it. */
  readonly verdicts: readonly Area[];
  /** Of the whole workbook. */
  readonly names: readonly PlannedName[];
  /** Those that the workbook has not yet. */
  readonly lists: readonly PlannedList[];
}

/** A sheet that is to be made before its plan is written: how it is seen and printed. */
export interface NewSheet {
  readonly name: string;
  readonly tabColor?: string;
  /** Rows that stay in view; the last of them stands at the top of every page. */
  readonly frozen?: number;
  readonly landscape?: boolean;
  /** Inches. */
  readonly margins: { readonly side: number; readonly top: number; readonly bottom: number };
}

/** In the codes of the format: file, sheet, page of pages. */
const FOOTER = { left: '&F', center: '&A', right: 'Page &P of &N' } as const;

/** Such a sheet as its description for the writers of files and of Excel. */
export const sheetOf = ({ name, tabColor, frozen, landscape, margins }: NewSheet): SheetDescription => ({
  name,
  ...(tabColor !== undefined && { tabColor }),
  gridlines: false,
  ...(frozen !== undefined && { freeze: `A${frozen + 1}` }),
  cells: {},
  print: {
    paper: 'Letter',
    ...(landscape && { landscape }),
    ...(frozen !== undefined && { titleRows: `${frozen}:${frozen}` }),
    footer: FOOTER,
    margins,
  },
});

/** Plans that belong together, and the sheets that are new for them. */
export interface DesignPlans {
  readonly sheets: readonly NewSheet[];
  readonly plans: readonly FormPlan[];
}

/** The form cannot be written there; nothing was changed. One sentence for a person. */
export class CannotWrite extends Error {
  override readonly name = 'CannotWrite';

  constructor(
    message: string,
    /** Where it would fit, where that helps. */
    readonly instead?: Place,
  ) {
    super(message);
  }
}
