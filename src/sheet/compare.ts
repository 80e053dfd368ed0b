/** The order of scalars: numbers before text before truth values; text without regard to case. */
import { CellError } from '../cells/value';
import { raise, type Scalar } from './values';

/** Made when first asked for: a single formula would wait for it longer than for its answer. */
let collator: Intl.Collator | undefined;

/** Below, at or above zero, as `<`, `=` and `>` see it; a blank is 0, "" or FALSE, whatever it meets. Raises errors. */
export function compare(a: Scalar, b: Scalar): number {
  if (a instanceof CellError) return raise(a);
  if (b instanceof CellError) return raise(b);
  if (typeof a === 'number' && typeof b === 'number') return compareNumbers(a, b);
  const left = a ?? blankLike(b);
  const right = b ?? blankLike(a);
  if (typeof left === 'string' && typeof right === 'string') return compareTexts(left, right);
  if (typeof left === typeof right) return Number(left) - Number(right);
  return rank(left) - rank(right);
}

/** Numbers that agree in 15 digits are equal, as a cell shows no more. */
export function compareNumbers(a: number, b: number): number {
  const difference = a - b;
  if (difference === 0 || Math.abs(difference) < 5e-16 * Math.abs(a)) return 0;
  return difference;
}

const PLAIN = /^[ -~]*$/;

export function compareTexts(a: string, b: string): number {
  if (a === b) return 0;
  if (a.length < 64 && PLAIN.test(a) && a.length === b.length && a.toLowerCase() === b.toLowerCase())
    return 0;
  collator ??= new Intl.Collator('en-US', { sensitivity: 'accent' });
  return collator.compare(a, b);
}

const blankLike = (other: Scalar): Scalar =>
  typeof other === 'string' ? '' : typeof other === 'boolean' ? false : 0;

const rank = (value: Scalar): number => (typeof value === 'number' ? 0 : typeof value === 'string' ? 1 : 2);
