/**
 * A workbook in memory, neutral between the file, the calculation engine, the grid and the command line.
 *
 * Addresses are zero-based row and column numbers. Formulas stand without the leading `=` and in our own
 * spelling: `MOLD.SEAT.FORCE(`, newer native functions without the file's `_xlfn.` and kin, `ANCHORARRAY(C1)`
 * for `C1#`, every shared formula written out in each cell.
 */
import { MAX_COLUMNS, type Area } from '../cells/address';
import type { CellValue } from '../cells/value';

export interface Cell {
  readonly row: number;
  readonly column: number;
  /** The value typed, or the cached result of the formula. Dates are serial numbers. */
  readonly value: CellValue;
  readonly formula?: string;
  /** The cells that the formula's array fills, this one included. Their values stand in cells without a formula. */
  readonly spill?: Area;
  /** An array formula of the old kind: its area is fixed by its author and does not grow with the result. */
  readonly fixedArray?: true;
  /** Index into `Workbook.styles`. */
  readonly style: number;
}

export type Underline = 'none' | 'single' | 'double';
export type Horizontal =
  'general' | 'left' | 'center' | 'right' | 'fill' | 'justify' | 'centerContinuous' | 'distributed';
export type Vertical = 'top' | 'center' | 'bottom' | 'justify' | 'distributed';

/** The line styles of ECMA-376 part 1, 18.18.3. */
export type LineStyle =
  | 'thin'
  | 'medium'
  | 'thick'
  | 'double'
  | 'hair'
  | 'dotted'
  | 'dashed'
  | 'dashDot'
  | 'dashDotDot'
  | 'mediumDashed'
  | 'mediumDashDot'
  | 'mediumDashDotDot'
  | 'slantDashDot';

export interface BorderLine {
  readonly line: LineStyle;
  /** `#RRGGBB`; absent = automatic (the color of text). */
  readonly color?: string;
}

export type Side = 'top' | 'right' | 'bottom' | 'left';
export type Borders = { readonly [side in Side]?: BorderLine };

export interface Font {
  readonly name: string;
  /** Points. */
  readonly size: number;
  readonly bold: boolean;
  readonly italic: boolean;
  readonly strike: boolean;
  readonly underline: Underline;
  /** `#RRGGBB`, theme and tint resolved; absent = automatic (black on white). */
  readonly color?: string;
}

export interface CellStyle {
  readonly font: Font;
  /** Background, `#RRGGBB`; absent = none. A pattern is shown by its plain color. */
  readonly fill?: string;
  readonly borders: Borders;
  readonly horizontal: Horizontal;
  readonly vertical: Vertical;
  readonly wrap: boolean;
  readonly indent: number;
  /** Degrees, anticlockwise; 255 = letters stacked. */
  readonly rotation: number;
  readonly shrink: boolean;
  /** The format code, for example `0.000" mm"`; `General` where none is set. */
  readonly numberFormat: string;
  /** Counts only on a protected sheet. */
  readonly locked: boolean;
}

/** The part of a style that a conditional format lays over the cell's own. */
export interface StyleOverlay {
  readonly font: Partial<Font>;
  readonly fill?: string;
  readonly borders: Borders;
  readonly numberFormat?: string;
}

/** A run of columns from `first` to `last` of the same look. */
export interface ColumnRun {
  readonly first: number;
  readonly last: number;
  /** Characters of the default font; absent = the sheet's default width. */
  readonly width?: number;
  readonly hidden: boolean;
  readonly style: number;
}

export interface Row {
  readonly row: number;
  /** Points; absent = the sheet's default height. */
  readonly height?: number;
  readonly hidden: boolean;
  /** Style of the row's empty cells, where it has one of its own. */
  readonly style?: number;
}

export type ValidationKind =
  'none' | 'list' | 'whole' | 'decimal' | 'date' | 'time' | 'textLength' | 'custom';

export interface Validation {
  readonly areas: readonly Area[];
  readonly kind: ValidationKind;
  /** For kind `list` written out in the rule itself; otherwise the choices come from the cells of `formulas[0]`. */
  readonly choices?: readonly string[];
  readonly operator: string;
  readonly formulas: readonly string[];
  readonly allowBlank: boolean;
  /** False where the sheet's author switched the arrow in the cell off. */
  readonly showsArrow: boolean;
  readonly prompt?: { readonly title: string; readonly text: string };
  readonly refusal?: {
    readonly style: 'stop' | 'warning' | 'information';
    readonly title: string;
    readonly text: string;
  };
}

/** Only rules that rest on formulas; color scales, bars and icons stay in the file and are not shown. */
export interface ConditionalFormat {
  readonly areas: readonly Area[];
  readonly kind: 'expression' | 'cellIs';
  /** Comparison of kind `cellIs`, for example `greaterThan` or `between`. */
  readonly operator?: string;
  /** Relative references count from the top left cell of the first area. */
  readonly formulas: readonly string[];
  /** 1 is looked at first. */
  readonly priority: number;
  readonly stopIfTrue: boolean;
  readonly style: StyleOverlay;
}

export interface Hyperlink {
  readonly area: Area;
  /** An address of the web or of mail; absent for a place in this workbook. */
  readonly target?: string;
  /** A place in this workbook, for example `Inputs!B3`. */
  readonly location?: string;
  readonly tooltip?: string;
}

export interface Note {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

export interface Table {
  readonly name: string;
  readonly area: Area;
  readonly hasHeader: boolean;
  readonly hasTotals: boolean;
  readonly columns: readonly string[];
  /** Its headings have arrows. */
  readonly filter?: SheetFilter;
}

export interface SheetFilter {
  /** The first row is the heading. */
  readonly area: Area;
  readonly columns: readonly FilterColumn[];
}

export interface FilterColumn {
  /** By its place in the area. */
  readonly column: number;
  /** The texts that stay to be seen; absent where the column is filtered in another way. */
  readonly shows?: readonly string[];
}

export interface Sheet {
  readonly name: string;
  readonly state: 'visible' | 'hidden' | 'veryHidden';
  /** Cells that hold something or have a style of their own, row by row, each row from the left. */
  readonly cells: readonly Cell[];
  readonly columns: readonly ColumnRun[];
  readonly rows: readonly Row[];
  /** Characters of the default font. */
  readonly defaultColumnWidth: number;
  /** Points. */
  readonly defaultRowHeight: number;
  readonly merges: readonly Area[];
  /** Rows and columns that stay in view; 0 = none. */
  readonly frozen: { readonly rows: number; readonly columns: number };
  readonly showsGridlines: boolean;
  readonly isProtected: boolean;
  /** Percent. */
  readonly zoom: number;
  readonly tabColor?: string;
  readonly validations: readonly Validation[];
  readonly conditionalFormats: readonly ConditionalFormat[];
  readonly hyperlinks: readonly Hyperlink[];
  readonly notes: readonly Note[];
  readonly tables: readonly Table[];
  /** Areas that a filter works on: their hidden rows are filtered out. */
  readonly filters?: readonly Area[];
  /** That of the sheet itself, whose headings have arrows; also where it asks for nothing yet. */
  readonly filter?: SheetFilter;
}

export interface DefinedName {
  readonly name: string;
  /** Without leading `=`. */
  readonly formula: string;
  /** The sheet that alone knows the name; absent = the whole workbook. */
  readonly sheet?: string;
  readonly hidden: boolean;
}

export interface Workbook {
  readonly sheets: readonly Sheet[];
  /** Index of the sheet in front. */
  readonly activeSheet: number;
  readonly names: readonly DefinedName[];
  readonly styles: readonly CellStyle[];
  /** Dates count from 1904 instead of 1900. */
  readonly date1904: boolean;
  /** Formulas that read their own result are meant, and calculated round and round. */
  readonly iterates?: true;
  /** A spreadsheet program calculates on with the numbers as they are shown, rounded. */
  readonly countsAsShown?: true;
  /** Excel on a Macintosh saved the file last: its CHAR and CODE go by another table of characters. */
  readonly isFromMacintosh?: true;
  /** Every part of the file by its name without leading slash, untouched: what saving starts from. */
  readonly parts: ReadonlyMap<string, Uint8Array>;
}

const byPlaceOf = new WeakMap<Pick<Sheet, 'cells'>, ReadonlyMap<number, Cell>>();

/** A finder of cells by place. The index behind it is made once a sheet. */
export function cellFinder(sheet: Pick<Sheet, 'cells'>): (row: number, column: number) => Cell | undefined {
  let byPlace = byPlaceOf.get(sheet);
  if (!byPlace) {
    byPlace = new Map(sheet.cells.map((cell) => [cell.row * MAX_COLUMNS + cell.column, cell]));
    byPlaceOf.set(sheet, byPlace);
  }
  const index = byPlace;
  return (row, column) => index.get(row * MAX_COLUMNS + column);
}
