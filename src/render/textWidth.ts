/** Widths of characters in ems of a plain sans serif, the later lines exceptions of the earlier: no canvas is at hand here. */
const WIDTHS: readonly (readonly [RegExp, number])[] = [
  [/[0-9a-z$#?_+=<>~^*]/, 0.556],
  [/[A-Z&]/, 0.68],
  [/[mMW%@—]/, 0.86],
  [/[-()frt"`°·]/, 0.34],
  [/[.,:;!|'iIjl[\]/\\ ]/, 0.28],
];
const OTHER = 0.6;
/** Pixels of a point. */
const POINT = 96 / 72;

const known = new Map<string, number>();

function charWidth(char: string): number {
  let width = known.get(char);
  if (width === undefined) {
    width = WIDTHS.reduce((found, [chars, ems]) => (chars.test(char) ? ems : found), OTHER);
    known.set(char, width);
  }
  return width;
}

/** Pixels that a text of this size in points takes, about. */
export function textWidth(text: string, size: number): number {
  let ems = 0;
  for (const char of text) ems += charWidth(char);
  return ems * size * POINT;
}
