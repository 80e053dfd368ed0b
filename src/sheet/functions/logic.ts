/** Truth values. IF and its kin calculate only what they need, and are in `formula/branches.ts`. */
import { CellError } from '../../cells/value';
import { toLogical } from '../coerce';
import { ArrayValue, raise, Reference, type Scalar, type Value } from '../values';
import { inContext, plain, type Context } from './spec';

/** Truth values and numbers count, typed text only where it is a word for one; raises `#VALUE!` where none is. */
function eachLogical(context: Context, args: readonly Value[], visit: (value: boolean) => void): void {
  let count = 0;
  const see = (value: boolean) => {
    count++;
    visit(value);
  };
  for (const arg of args) {
    if (arg instanceof Reference || arg instanceof ArrayValue) {
      context.each(arg, (value) => {
        if (value instanceof CellError) raise(value);
        if (typeof value === 'boolean' || typeof value === 'number') see(Boolean(value));
      });
    } else if (typeof arg !== 'string' || /^(?:true|false)$/i.test(arg)) see(toLogical(arg as Scalar));
  }
  if (count === 0) raise('#VALUE!');
}

export const logic = [
  plain('TRUE', '', () => true),
  plain('FALSE', '', () => false),
  plain('NOT', 'b', (value) => !value),
  inContext('AND', '(r)+', (context, ...args) => {
    let all = true;
    eachLogical(context, args, (value) => (all &&= value));
    return all;
  }),
  inContext('OR', '(r)+', (context, ...args) => {
    let any = false;
    eachLogical(context, args, (value) => (any ||= value));
    return any;
  }),
  inContext('XOR', '(r)+', (context, ...args) => {
    let odd = false;
    eachLogical(context, args, (value) => (odd = odd !== value));
    return odd;
  }),
];
