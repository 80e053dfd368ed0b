/** Points of a line of small text. */
const LINE = 12;
const TALLEST = 400;

/** Small text sets about a quarter more letters than the width of a column counts. */
const linesOf = (text: string, width: number): number =>
  text.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / (width * 1.25))), 0);

/** The height of a row of small wrapped texts in columns of these widths. */
export const heightOf = (texts: readonly { readonly text: string; readonly width: number }[]): number =>
  Math.min(TALLEST, 6 + LINE * Math.max(1, ...texts.map(({ text, width }) => linesOf(text, width))));
