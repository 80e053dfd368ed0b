import {
  BooleanNumber,
  BorderStyleTypes,
  ColorKit,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import type { IBorderStyleData, IColorStyle, IStyleData, Nullable } from '@univerjs/core';
import type {
  BorderLine,
  Borders,
  CellStyle,
  Font,
  Horizontal,
  LineStyle,
  Side,
  Vertical,
} from '../package/model';
import type { StyleDescription } from '../package/styleEditor';

const LINES: Readonly<Record<LineStyle, BorderStyleTypes>> = {
  thin: BorderStyleTypes.THIN,
  medium: BorderStyleTypes.MEDIUM,
  thick: BorderStyleTypes.THICK,
  double: BorderStyleTypes.DOUBLE,
  hair: BorderStyleTypes.HAIR,
  dotted: BorderStyleTypes.DOTTED,
  dashed: BorderStyleTypes.DASHED,
  dashDot: BorderStyleTypes.DASH_DOT,
  dashDotDot: BorderStyleTypes.DASH_DOT_DOT,
  mediumDashed: BorderStyleTypes.MEDIUM_DASHED,
  mediumDashDot: BorderStyleTypes.MEDIUM_DASH_DOT,
  mediumDashDotDot: BorderStyleTypes.MEDIUM_DASH_DOT_DOT,
  slantDashDot: BorderStyleTypes.SLANT_DASH_DOT,
};

const HORIZONTAL: Readonly<Record<Horizontal, HorizontalAlign>> = {
  general: HorizontalAlign.UNSPECIFIED,
  fill: HorizontalAlign.LEFT,
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  centerContinuous: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
  justify: HorizontalAlign.JUSTIFIED,
  distributed: HorizontalAlign.DISTRIBUTED,
};

const VERTICAL: Readonly<Record<Vertical, VerticalAlign>> = {
  top: VerticalAlign.TOP,
  center: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
  justify: VerticalAlign.TOP,
  distributed: VerticalAlign.MIDDLE,
};

/** Three characters of the default font a step, as spreadsheets indent. */
const INDENT_PIXELS = 9;

/** A cell style as the grid draws it. */
export function gridStyle(style: CellStyle): IStyleData {
  const { font, borders } = style;
  return {
    ff: font.name,
    fs: font.size,
    ...(font.bold && { bl: BooleanNumber.TRUE }),
    ...(font.italic && { it: BooleanNumber.TRUE }),
    ...(font.strike && { st: { s: BooleanNumber.TRUE } }),
    ...(font.underline !== 'none' && { ul: { s: BooleanNumber.TRUE } }),
    ...(font.color !== undefined && { cl: { rgb: font.color } }),
    ...(style.fill !== undefined && { bg: { rgb: style.fill } }),
    ...(Object.keys(borders).length > 0 && { bd: gridBorders(borders) }),
    ...(style.horizontal !== 'general' && { ht: HORIZONTAL[style.horizontal] }),
    vt: VERTICAL[style.vertical],
    ...(style.wrap && { tb: WrapStrategy.WRAP }),
    ...(style.rotation !== 0 && { tr: rotation(style.rotation) }),
    ...(style.indent > 0 && { pd: indent(style) }),
    ...(style.numberFormat !== 'General' && { n: { pattern: style.numberFormat } }),
  };
}

export function gridBorders(borders: Borders): NonNullable<IStyleData['bd']> {
  return {
    ...(borders.top && { t: border(borders.top) }),
    ...(borders.right && { r: border(borders.right) }),
    ...(borders.bottom && { b: border(borders.bottom) }),
    ...(borders.left && { l: border(borders.left) }),
  };
}

function border({ line, color = '#000000' }: BorderLine): IBorderStyleData {
  return { s: LINES[line], cl: { rgb: color } };
}

/** The grid counts angles clockwise. */
function rotation(degrees: number): NonNullable<IStyleData['tr']> {
  return degrees === 255 ? { a: 0, v: BooleanNumber.TRUE } : { a: -degrees };
}

function indent({ indent: steps, horizontal }: CellStyle): NonNullable<IStyleData['pd']> {
  const pixels = steps * INDENT_PIXELS;
  return horizontal === 'right' ? { r: pixels } : { l: pixels };
}

const SIDES = { t: 'top', r: 'right', b: 'bottom', l: 'left' } as const satisfies Record<string, Side>;

/** The style of a cell that was changed in the grid, as saving takes it. */
export function styleOfGrid(style: IStyleData): StyleDescription {
  const { bg, tr, pd, tb, n } = style;
  const fill = hexColor(bg);
  const horizontal = (['general', 'left', 'center', 'right', 'justify', 'distributed'] as const).find(
    (one) => HORIZONTAL[one] === style.ht,
  );
  const vertical = (['top', 'center', 'bottom'] as const).find((one) => VERTICAL[one] === style.vt);
  return {
    font: fontOfGrid(style),
    ...(fill !== undefined && { fill }),
    borders: bordersOfGrid(style),
    ...(horizontal && { horizontal }),
    ...(vertical && { vertical }),
    ...(tb === WrapStrategy.WRAP && { wrap: true }),
    ...(tr && { rotation: tr.v === BooleanNumber.TRUE ? 255 : -tr.a }),
    ...(pd && { indent: Math.round((pd.l ?? pd.r ?? 0) / INDENT_PIXELS) }),
    ...(n?.pattern && { numberFormat: n.pattern }),
  };
}

function fontOfGrid({ ff, fs, bl, it, st, ul, cl }: IStyleData): Partial<Font> {
  const color = hexColor(cl);
  return {
    ...(ff && { name: ff }),
    ...(fs && { size: fs }),
    bold: bl === BooleanNumber.TRUE,
    italic: it === BooleanNumber.TRUE,
    strike: st?.s === BooleanNumber.TRUE,
    underline: ul?.s === BooleanNumber.TRUE ? 'single' : 'none',
    ...(color !== undefined && { color }),
  };
}

function bordersOfGrid({ bd }: IStyleData): Borders {
  const borders: { -readonly [side in Side]?: BorderLine } = {};
  for (const [key, side] of Object.entries(SIDES)) {
    const drawn = bd?.[key as keyof typeof SIDES];
    const line = (Object.keys(LINES) as LineStyle[]).find((one) => LINES[one] === drawn?.s);
    const color = hexColor(drawn?.cl);
    if (line) borders[side] = { line, ...(color !== undefined && { color }) };
  }
  return borders;
}

/** The grid may also hold names of colors and `rgb(…)`, which files do not know. */
function hexColor(color: Nullable<IColorStyle>): string | undefined {
  if (!color?.rgb) return undefined;
  const read = new ColorKit(color.rgb);
  return read.isValid ? read.toHexString().slice(0, 7).toUpperCase() : undefined;
}
