/** A workbook as its author describes it: places in A1 form, styles by name. `author.ts` makes the file of it. */
import type { CellValue } from '../cells/value';
import type { Borders, Font, Sheet } from './model';
import type { StyleDescription } from './styleEditor';

export type { StyleDescription } from './styleEditor';

export interface CellDescription {
  /** The constant, or the known result of the formula. */
  readonly value?: CellValue;
  /** In our spelling, without leading `=`. */
  readonly formula?: string;
  /** For a formula that fills more cells: all of them, for example `B6:D9`. */
  readonly fills?: string;
  /** Name of a style of the description. */
  readonly style?: string;
  readonly note?: string;
  /** An address of the web or of mail, or a place in the workbook after `#`: `#Inputs!B3`. */
  readonly link?: string;
}

export interface ValidationDescription {
  /** For example `B3:B9`. */
  readonly cells: string;
  /** The words to choose from, or a formula that gives their cells: `Lists!$A$2:$A$9`. */
  readonly choices?: readonly string[] | string;
  /** A formula that is true for a good entry, relative to the first cell; instead of choices. */
  readonly accepts?: string;
  readonly prompt?: { readonly title: string; readonly text: string };
  readonly refusal?: {
    readonly style?: 'stop' | 'warning' | 'information';
    readonly title: string;
    readonly text: string;
  };
}

export interface ConditionDescription {
  readonly cells: string;
  /** A formula, relative to the first cell. */
  readonly when: string;
  readonly style: OverlayDescription;
}

export interface OverlayDescription {
  readonly font?: Partial<Font>;
  readonly fill?: string;
  readonly borders?: Borders;
  readonly numberFormat?: string;
}

export interface PrintDescription {
  readonly paper: 'A4' | 'Letter';
  readonly landscape?: boolean;
  /** Pages side by side, 1 unless told; 0 = as many as it takes. */
  readonly pagesWide?: number;
  /** Pages one under another; 0, the default, = as many as it takes. */
  readonly pagesTall?: number;
  /** For example `A1:F60`. */
  readonly area?: string;
  /** Rows repeated on every page, counted from 1: `1:3`. */
  readonly titleRows?: string;
  /** Texts with the codes of the format: `&P` page, `&N` pages, `&A` sheet, `&F` file, `&D` date, `&&` an ampersand. */
  readonly header?: HeaderDescription;
  readonly footer?: HeaderDescription;
  /** Inches. */
  readonly margins?: { readonly side?: number; readonly top?: number; readonly bottom?: number };
  readonly centered?: boolean;
  /** Numbers, from 1, of the rows that begin a new page. */
  readonly breaksBefore?: readonly number[];
}

export interface HeaderDescription {
  readonly left?: string;
  readonly center?: string;
  readonly right?: string;
}

export interface SheetDescription {
  readonly name: string;
  readonly state?: Sheet['state'];
  readonly tabColor?: string;
  /** Shown unless told otherwise. */
  readonly gridlines?: boolean;
  /** Percent. */
  readonly zoom?: number;
  /** Widths in characters by column or run of columns: `{ A: 4, 'B:D': 12 }`; 0 hides. */
  readonly columns?: Readonly<Record<string, number>>;
  /** Heights in points by row number from 1; 0 hides. */
  readonly rows?: Readonly<Record<number, number>>;
  /** By address; a bare value is a cell without anything else. */
  readonly cells: Readonly<Record<string, CellDescription | string | number | boolean>>;
  /** Blank cells of a merged area take the style of its first cell. */
  readonly merges?: readonly string[];
  /** The first cell that scrolls: `A4` keeps three rows in view. */
  readonly freeze?: string;
  readonly validations?: readonly ValidationDescription[];
  readonly conditions?: readonly ConditionDescription[];
  readonly print?: PrintDescription;
  /** Cells whose style is not `locked: false` refuse to be changed; no password. */
  readonly protect?: boolean;
}

export interface Properties {
  readonly title?: string;
  readonly subject?: string;
  readonly description?: string;
  readonly keywords?: string;
}

/** What is added to a workbook. */
export interface SheetsDescription {
  readonly sheets: readonly SheetDescription[];
  readonly styles?: Readonly<Record<string, StyleDescription>>;
  /** Workbook-wide names and their formulas without `=`: `{ draft: 'Inputs!$C$4' }`. */
  readonly names?: Readonly<Record<string, string>>;
  /** Names that people do not see in lists: what a program keeps for itself. */
  readonly hiddenNames?: Readonly<Record<string, string>>;
}

export interface WorkbookDescription extends SheetsDescription {
  readonly properties?: Properties;
  /** The font of cells without another. */
  readonly font?: { readonly name: string; readonly size: number };
}
