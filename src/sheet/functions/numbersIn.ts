import { CellError } from '../../cells/value';
import { toNumber } from '../coerce';
import { ArrayValue, raise, Reference, type Value } from '../values';
import type { Context } from './spec';

/**
 * The numbers of arguments as SUM sees them: what is typed itself is read as a number; of cells and arrays only
 * numbers count, text, truth values and blanks do not. Errors are raised.
 */
export function eachNumber(context: Context, args: readonly Value[], visit: (value: number) => void): void {
  for (const arg of args) {
    if (arg instanceof Reference || arg instanceof ArrayValue) {
      context.each(arg, (value) => {
        if (typeof value === 'number') visit(value);
        else if (value instanceof CellError) raise(value);
      });
    } else visit(toNumber(scalarOf(arg), context.date1904));
  }
}

const scalarOf = (value: Exclude<Value, Reference | ArrayValue>) =>
  typeof value === 'object' && value !== null && !(value instanceof CellError) ? raise('#VALUE!') : value;
