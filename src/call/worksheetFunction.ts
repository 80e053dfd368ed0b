import type { Argument, Matrix } from '../cells/value';
import type { Change } from '../core/define';
import type { FunctionWords } from '../derive/words';

/** One function as every host sees it: in words, and to be called. */
export interface WorksheetFunction extends FunctionWords {
  /** Why it answers otherwise than in an earlier basis. */
  readonly changes?: readonly Change[];
  /** Answers in cells; refusals are `CellError`s in the result. Never throws, never gives NaN, Infinity or blank. */
  call(args: readonly Argument[]): Matrix;
}
