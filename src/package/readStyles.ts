import type {
  BorderLine,
  Borders,
  CellStyle,
  Font,
  Horizontal,
  LineStyle,
  Side,
  StyleOverlay,
  Underline,
  Vertical,
} from './model';
import type { Theme } from './colors';
import { resolveColor } from './colors';
import { BUILT_IN_FORMATS } from './numberFormats';
import type { XmlElement } from './xml';
import { child, childrenOf, flag, numeric } from './xml';

const DEFAULT_FONT: Font = {
  name: 'Calibri',
  size: 11,
  bold: false,
  italic: false,
  strike: false,
  underline: 'none',
};

export const DEFAULT_STYLE: CellStyle = {
  font: DEFAULT_FONT,
  borders: {},
  horizontal: 'general',
  vertical: 'bottom',
  wrap: false,
  indent: 0,
  rotation: 0,
  shrink: false,
  numberFormat: 'General',
  locked: true,
};

export interface Styles {
  readonly cells: readonly CellStyle[];
  /** Overlays of conditional formats. */
  readonly overlays: readonly StyleOverlay[];
}

export function readStyles(root: XmlElement | undefined, theme: Theme): Styles {
  const formats = new Map(BUILT_IN_FORMATS);
  for (const { attributes } of childrenOf(child(root, 'numFmts'), 'numFmt')) {
    formats.set(numeric(attributes['numFmtId'], 0), attributes['formatCode'] ?? 'General');
  }
  const fonts = childrenOf(child(root, 'fonts'), 'font').map((font) => ({
    ...DEFAULT_FONT,
    ...readFont(font, theme),
  }));
  const fills = childrenOf(child(root, 'fills'), 'fill').map((fill) => readFill(fill, theme));
  const borders = childrenOf(child(root, 'borders'), 'border').map((border) => readBorders(border, theme));
  const cells = childrenOf(child(root, 'cellXfs'), 'xf').map((xf): CellStyle => {
    const pick = <T>(list: readonly T[], attribute: string) => list[numeric(xf.attributes[attribute], 0)];
    const fill = pick(fills, 'fillId');
    return {
      ...DEFAULT_STYLE,
      font: pick(fonts, 'fontId') ?? DEFAULT_FONT,
      ...(fill === undefined ? {} : { fill }),
      borders: pick(borders, 'borderId') ?? {},
      numberFormat: formats.get(numeric(xf.attributes['numFmtId'], 0)) ?? 'General',
      ...readAlignment(child(xf, 'alignment')),
      locked: flag(child(xf, 'protection')?.attributes['locked'], true),
    };
  });
  const overlays = childrenOf(child(root, 'dxfs'), 'dxf').map((dxf) => readOverlay(dxf, theme));
  return { cells: cells.length > 0 ? cells : [DEFAULT_STYLE], overlays };
}

function readFont(font: XmlElement | undefined, theme: Theme): Partial<Font> {
  const value = (name: string) => child(font, name)?.attributes['val'];
  const switchOf = (name: string) => {
    const element = child(font, name);
    return element === undefined ? undefined : flag(element.attributes['val'], true);
  };
  const underline = child(font, 'u');
  return dropUndefined({
    name: value('name'),
    size: value('sz') === undefined ? undefined : numeric(value('sz'), 11),
    bold: switchOf('b'),
    italic: switchOf('i'),
    strike: switchOf('strike'),
    underline: underline === undefined ? undefined : underlineOf(underline.attributes['val'] ?? 'single'),
    color: resolveColor(child(font, 'color'), theme),
  });
}

function underlineOf(value: string): Underline {
  if (value.startsWith('double')) return 'double';
  return value === 'none' ? 'none' : 'single';
}

function readFill(fill: XmlElement | undefined, theme: Theme): string | undefined {
  const pattern = child(fill, 'patternFill');
  if (pattern !== undefined && (pattern.attributes['patternType'] ?? 'none') !== 'none') {
    return resolveColor(child(pattern, 'fgColor'), theme) ?? resolveColor(child(pattern, 'bgColor'), theme);
  }
  const stop = child(child(fill, 'gradientFill'), 'stop');
  return resolveColor(child(stop, 'color'), theme);
}

function readBorders(border: XmlElement | undefined, theme: Theme): Borders {
  const borders: { [side in Side]?: BorderLine } = {};
  for (const side of ['top', 'right', 'bottom', 'left'] as const) {
    // The strict form of the format says start and end.
    const element =
      child(border, side) ?? child(border, side === 'left' ? 'start' : side === 'right' ? 'end' : side);
    const line = element?.attributes['style'];
    if (line === undefined || line === 'none') continue;
    const color = resolveColor(child(element, 'color'), theme);
    borders[side] = { line: line as LineStyle, ...(color === undefined ? {} : { color }) };
  }
  return borders;
}

function readAlignment(alignment: XmlElement | undefined): Partial<CellStyle> {
  if (alignment === undefined) return {};
  const { horizontal, vertical, wrapText, indent, textRotation, shrinkToFit } = alignment.attributes;
  const rotation = numeric(textRotation, 0);
  return {
    horizontal: (horizontal ?? 'general') as Horizontal,
    vertical: (vertical ?? 'bottom') as Vertical,
    wrap: flag(wrapText),
    indent: numeric(indent, 0),
    // Files count clockwise turns from 91 on.
    rotation: rotation > 90 && rotation < 255 ? 90 - rotation : rotation,
    shrink: flag(shrinkToFit),
  };
}

/** In an overlay a plain fill stands as the background color, and mostly without a pattern type. */
function readOverlay(dxf: XmlElement, theme: Theme): StyleOverlay {
  const pattern = child(child(dxf, 'fill'), 'patternFill');
  const fill =
    resolveColor(child(pattern, 'bgColor'), theme) ?? resolveColor(child(pattern, 'fgColor'), theme);
  const numberFormat = child(dxf, 'numFmt')?.attributes['formatCode'];
  return {
    font: readFont(child(dxf, 'font'), theme),
    borders: readBorders(child(dxf, 'border'), theme),
    ...dropUndefined({ fill, numberFormat }),
  };
}

export function dropUndefined<T extends object>(object: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as never;
}
