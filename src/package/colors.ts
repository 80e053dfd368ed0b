/** Colors of styles as plain `#RRGGBB`: theme, tint and old palette resolved. */
import type { Parts } from './relationships';
import { readText } from './relationships';
import type { XmlElement } from './xml';
import { child, numeric, parseXml } from './xml';

/** Theme colors in the order in which styles number them. */
export type Theme = readonly string[];

/** Of files without a theme. */
export const OFFICE_THEME: Theme = [
  '#FFFFFF',
  '#000000',
  '#E7E6E6',
  '#44546A',
  '#4472C4',
  '#ED7D31',
  '#A5A5A5',
  '#FFC000',
  '#5B9BD5',
  '#70AD47',
  '#0563C1',
  '#954F72',
];

/** Styles count light before dark, the theme part has dark before light. */
const THEME_ORDER = [
  'lt1',
  'dk1',
  'lt2',
  'dk2',
  'accent1',
  'accent2',
  'accent3',
  'accent4',
  'accent5',
  'accent6',
  'hlink',
  'folHlink',
];

/** The old palette, ECMA-376 part 1, 18.8.27; 0 to 7 repeat 8 to 15. */
const PALETTE =
  '000000FFFFFFFF000000FF000000FFFFFF00FF00FF00FFFF000000FFFFFFFF000000FF000000FFFFFF00FF00FF00FFFF' +
  '800000008000000080808000800080008080C0C0C08080809999FF993366FFFFCCCCFFFF660066FF80800066CCCCCCFF' +
  '000080FF00FFFFFF0000FFFF8000808000000080800000FF00CCFFCCFFFFCCFFCCFFFF9999CCFFFF99CCCC99FFFFCC99' +
  '3366FF33CCCC99CC00FFCC00FF9900FF6600666699969696003366339966003300333300993300993366333399333333';

export function readTheme(parts: Parts, part: string | undefined): Theme {
  const xml = part === undefined ? undefined : readText(parts, part);
  if (xml === undefined) return OFFICE_THEME;
  const scheme = child(child(parseXml(xml, part ?? ''), 'themeElements'), 'clrScheme');
  return THEME_ORDER.map((name, at) => {
    const color = child(scheme, name)?.children[0]?.attributes;
    return hex(color?.['lastClr'] ?? color?.['val']) ?? OFFICE_THEME[at] ?? '#000000';
  });
}

/** undefined for no color and for the automatic one. */
export function resolveColor(element: XmlElement | undefined, theme: Theme): string | undefined {
  if (element === undefined) return undefined;
  const { rgb, theme: number, indexed, tint } = element.attributes;
  const plain =
    number !== undefined
      ? theme[numeric(number, -1)]
      : rgb !== undefined
        ? hex(rgb.slice(-6))
        : paletteColor(indexed);
  return plain === undefined ? undefined : tinted(plain, Math.max(-1, Math.min(1, numeric(tint, 0))));
}

function paletteColor(index: string | undefined): string | undefined {
  const at = numeric(index, -1);
  return at >= 0 && at < 64 ? hex(PALETTE.slice(at * 6, at * 6 + 6)) : undefined;
}

/** Six digits as a color. */
export function hex(digits: string | undefined): string | undefined {
  return digits !== undefined && /^[0-9a-f]{6}$/i.test(digits) ? `#${digits.toUpperCase()}` : undefined;
}

/** Lighter (towards 1) or darker (towards -1) in lightness, hue and saturation kept: ECMA-376 part 1, 18.8.3. */
function tinted(color: string, tint: number): string {
  if (tint === 0) return color;
  return withLightness(color, (lightness) =>
    tint < 0 ? lightness * (1 + tint) : lightness * (1 - tint) + tint,
  );
}

/** The color at another lightness, from 0 to 1; hue and saturation stay. */
export function withLightness(color: string, change: (lightness: number) => number): string {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => parseInt(color.slice(at, at + 2), 16) / 255);
  const high = Math.max(r, g, b);
  const low = Math.min(r, g, b);
  const lightness = (high + low) / 2;
  const target = Math.max(0, Math.min(1, change(lightness)));
  // Chroma shrinks with the room that the new lightness leaves; hue is where the three channels lie between low and high.
  const room = (l: number) => 1 - Math.abs(2 * l - 1);
  const chroma = high === low ? 0 : ((high - low) / room(lightness)) * room(target);
  const channel = (value: number) => {
    const share = high === low ? 0.5 : (value - low) / (high - low);
    return Math.round(255 * (target + chroma * (share - 0.5)))
      .toString(16)
      .toUpperCase()
      .padStart(2, '0');
  };
  return `#${channel(r)}${channel(g)}${channel(b)}`;
}
