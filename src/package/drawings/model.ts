/** Charts and pictures that stand over the cells of a sheet, neutral between the file and whoever draws them. */

/** A corner hangs on a cell: pixels of 1/96 inch to the right of and below its top left. */
export interface Corner {
  readonly row: number;
  readonly column: number;
  readonly right: number;
  readonly down: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where a drawing stands: between two corners, from a corner in a size, or at a fixed place of the sheet. */
export type Anchor =
  | { readonly from: Corner; readonly to: Corner }
  | { readonly from: Corner; readonly size: Size }
  | { readonly at: { readonly x: number; readonly y: number }; readonly size: Size };

/** A text, and the cells that it comes from. */
export interface Words {
  readonly text: string;
  readonly reference?: string;
}

/** Values as the file has them, and the cells that they come from. */
export interface Values {
  readonly cached: readonly (number | string | null)[];
  readonly reference?: string;
  /** As the numbers were shown in their cells; absent where they had no format. */
  readonly numberFormat?: string;
}

export type PlotKind = 'line' | 'scatter' | 'column' | 'bar' | 'area';

export interface Series {
  readonly name?: Words;
  /** What stands along the first axis; 1, 2, 3 … where there is nothing. */
  readonly along?: Values;
  readonly values: Values;
  /** `#RRGGBB` of the line, of the bars, of the area. */
  readonly color: string;
  /** Pixels; 0 where the points are not joined. Of bars: the border, none. */
  readonly line: number;
  readonly dashed: boolean;
  readonly marker?: { readonly shape: string; readonly size: number; readonly color: string };
  /** Every value is written at its point or bar. */
  readonly labels?: { readonly numberFormat?: string };
}

export interface Plot {
  readonly kind: PlotKind;
  /** Values of a place along the axis stand beside each other, on each other, or fill the whole height. */
  readonly grouping: 'clustered' | 'stacked' | 'percentStacked';
  /** Percent of a bar's width between groups, and that bars of a group overlap. */
  readonly gap: number;
  readonly overlap: number;
  /** On the second value axis, at the other side. */
  readonly second: boolean;
  readonly series: readonly Series[];
}

export interface Axis {
  readonly title?: Words;
  readonly least?: number;
  readonly most?: number;
  readonly step?: number;
  /** Base of the logarithm. */
  readonly log?: number;
  readonly reversed: boolean;
  readonly shown: boolean;
  readonly gridlines: boolean;
  readonly numberFormat?: string;
}

export interface Chart {
  readonly title?: Words;
  readonly plots: readonly Plot[];
  readonly along: Axis;
  readonly values: Axis;
  readonly second?: Axis;
  readonly legend?: 'right' | 'left' | 'top' | 'bottom';
  /** Points of rows and columns that are hidden are left out. */
  readonly onlyVisible: boolean;
  readonly background?: string;
  /** What it holds that is not drawn: the kind in words. */
  readonly notDrawn?: string;
  /** What is left out of what is drawn, such as trend lines. */
  readonly leftOut?: readonly string[];
}

/** Of an image that is shown whole unless cropped: shares of its width and height cut off at each side. */
export interface Crop {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export type Shown =
  | { readonly shows: 'chart'; readonly chart: Chart }
  | { readonly shows: 'picture'; readonly type: string; readonly part: string; readonly crop?: Crop }
  /** What is not drawn here, such as a shape: a frame with words. */
  | { readonly shows: 'frame'; readonly words: string; readonly fill?: string };

export type Drawing = Shown & {
  readonly anchor: Anchor;
  readonly name: string;
  /** What it shows, in words, as its author told those who cannot see it. */
  readonly description?: string;
};

/** Pixels of the units that drawings are measured in. */
export const EMU = 9525;
