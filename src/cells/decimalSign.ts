/** The sign between whole part and decimals that a person reads and types; files and formulas have the point. */
import { withComma } from './numberText';

export type DecimalSign = '.' | ',';

let sign: DecimalSign = '.';

export const decimalSign = (): DecimalSign => sign;

export function setDecimalSign(chosen: DecimalSign): void {
  sign = chosen;
}

/** A number as it is shown, in the person's sign. */
export const inOwnSign = (text: string): string => (sign === ',' ? withComma(text) : text);

/** `0,5` and `0,5 mm` as they are typed, in the standard form; what already has a point stays. */
export function inStandardForm(text: string): string {
  if (sign === '.') return text;
  return text.replace(/^(\s*[+-]?\d*),(\d+)(?![\d.,])/, '$1.$2');
}
