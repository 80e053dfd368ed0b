import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import type { IBorderStyleData, IStyleData } from '@univerjs/core';
import type { BorderLine, CellStyle, Horizontal, LineStyle, Vertical } from '../model';

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
    ...(Object.keys(borders).length > 0 && {
      bd: {
        ...(borders.top && { t: border(borders.top) }),
        ...(borders.right && { r: border(borders.right) }),
        ...(borders.bottom && { b: border(borders.bottom) }),
        ...(borders.left && { l: border(borders.left) }),
      },
    }),
    ...(style.horizontal !== 'general' && { ht: HORIZONTAL[style.horizontal] }),
    vt: VERTICAL[style.vertical],
    ...(style.wrap && { tb: WrapStrategy.WRAP }),
    ...(style.rotation !== 0 && { tr: rotation(style.rotation) }),
    ...(style.indent > 0 && { pd: indent(style) }),
    ...(style.numberFormat !== 'General' && { n: { pattern: style.numberFormat } }),
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
