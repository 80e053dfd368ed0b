/** Digits that a number without a format shows at most, as worksheets do. */
const MOST_DIGITS = 10;

/**
 * The text of a number that has no format of its own, with as many decimals as fit; a whole part is never cut.
 * Undefined where not even the shortest form fits.
 */
export function generalText(value: number, fits: (text: string) => boolean): string | undefined {
  return [...plainTexts(value), ...exponentTexts(value)].find(fits);
}

function* plainTexts(value: number): Generator<string> {
  const size = Math.abs(value);
  if (size !== 0 && (size < 1e-4 || size >= 1e11)) return;
  const wholeDigits = Math.max(1, Math.floor(Math.log10(size || 1)) + 1);
  for (let decimals = Math.max(0, MOST_DIGITS - wholeDigits); decimals >= 0; decimals--) {
    const text = withoutEndingZeros(value.toFixed(decimals));
    // Rounded to nothing, a small number would read as zero.
    if (value === 0 || Number(text) !== 0) yield text;
  }
}

function* exponentTexts(value: number): Generator<string> {
  for (let decimals = 5; decimals >= 0; decimals--) {
    const [mantissa = '', exponent = ''] = value.toExponential(decimals).split('e');
    yield `${withoutEndingZeros(mantissa)}E${exponent.charAt(0)}${exponent.slice(1).padStart(2, '0')}`;
  }
}

function withoutEndingZeros(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** A number as a format shows it, with a decimal comma. Only signs between digits count: the rest is text of the format. */
export function withComma(text: string): string {
  return text.replace(/(?<=\d)([.,])(?=\d)|([.])(?=\d)/g, (one) => (one === '.' ? ',' : '.'));
}
