/** Points of a line of small text, and of what a row has round it. */
const LINE = 11.5;
const ROUND = 3;
const TALLEST = 400;

/** A column of this width is so wide that hardly a line breaks early. */
const WIDE = 80;

/** Small text sets more letters than the width of a column counts. */
const linesOf = (text: string, width: number): number => {
  const letters = width * (width < WIDE ? 1.25 : 1.45);
  return text.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / letters)), 0);
};

/** The height of a row of small wrapped texts in columns of these widths. */
export const heightOf = (texts: readonly { readonly text: string; readonly width: number }[]): number =>
  Math.min(TALLEST, ROUND + LINE * Math.max(1, ...texts.map(({ text, width }) => linesOf(text, width))));
