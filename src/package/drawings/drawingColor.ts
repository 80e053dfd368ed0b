/** Colors as drawings write them (ECMA-376 part 1, 20.1.2.3): a base, then changes to it. */
import { hex, OFFICE_THEME, withLightness, type Theme } from '../colors';
import { child, numeric, type XmlElement } from '../xml';

/** Places of the names in the theme as styles number it; drawings call the first four by their use. */
const SCHEME = new Map(
  [
    ['bg1', 'lt1'],
    ['tx1', 'dk1'],
    ['bg2', 'lt2'],
    ['tx2', 'dk2'],
    ['accent1'],
    ['accent2'],
    ['accent3'],
    ['accent4'],
    ['accent5'],
    ['accent6'],
    ['hlink'],
    ['folHlink'],
  ].flatMap((names, at) => names.map((name) => [name, at] as const)),
);
/** The few color words that programs write. */
const WORDS: Readonly<Record<string, string>> = {
  black: '#000000',
  white: '#FFFFFF',
  red: '#FF0000',
  green: '#008000',
  blue: '#0000FF',
  yellow: '#FFFF00',
  orange: '#FFA500',
  gray: '#808080',
  grey: '#808080',
};
/** 100 % in the thousandths that the format counts. */
const WHOLE = 100_000;
const FIRST_ACCENT = 4;
const ACCENTS = 6;

/** The color inside a `solidFill` and its like; of a gradient the first. Undefined where there is none. */
export function fillColor(properties: XmlElement | undefined, theme: Theme): string | undefined {
  const solid = child(properties, 'solidFill');
  const gradient = child(child(child(properties, 'gradFill'), 'gsLst'), 'gs');
  const pattern = child(child(properties, 'pattFill'), 'fgClr');
  return colorIn(solid ?? gradient ?? pattern, theme);
}

export const hasNoFill = (properties: XmlElement | undefined): boolean =>
  child(properties, 'noFill') !== undefined;

/** What a series gets that says no color of its own. */
export function accent(at: number, theme: Theme = OFFICE_THEME): string {
  const plain = theme[FIRST_ACCENT + (at % ACCENTS)] ?? '#000000';
  // The second round is darker, so that it can be told from the first.
  return at < ACCENTS ? plain : withLightness(plain, (lightness) => lightness * 0.6);
}

export function colorIn(holder: XmlElement | undefined, theme: Theme): string | undefined {
  const element = holder?.children[0];
  if (!element) return undefined;
  const { val, lastClr } = element.attributes;
  const base =
    element.name === 'schemeClr'
      ? theme[SCHEME.get(val ?? '') ?? -1]
      : (hex(lastClr ?? val) ?? WORDS[val ?? '']);
  return base === undefined ? undefined : element.children.reduce(changed, base);
}

function changed(color: string, { name, attributes }: XmlElement): string {
  const share = numeric(attributes['val'], WHOLE) / WHOLE;
  switch (name) {
    case 'lumMod':
      return withLightness(color, (lightness) => lightness * share);
    case 'lumOff':
      return withLightness(color, (lightness) => lightness + share);
    case 'shade':
      return mixed(color, '#000000', share);
    case 'tint':
      return mixed(color, '#FFFFFF', share);
    // What shines through is seen on white paper.
    case 'alpha':
      return mixed(color, '#FFFFFF', share);
    default:
      return color;
  }
}

/** So much of the color, the rest of the other. */
function mixed(color: string, other: string, share: number): string {
  const channel = (at: number): string =>
    Math.round(
      parseInt(color.slice(at, at + 2), 16) * share + parseInt(other.slice(at, at + 2), 16) * (1 - share),
    )
      .toString(16)
      .toUpperCase()
      .padStart(2, '0');
  return `#${channel(1)}${channel(3)}${channel(5)}`;
}
