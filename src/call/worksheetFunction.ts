import type { Argument, Matrix } from '../cells/value';

/** One parameter as the hosts show it in autocomplete and argument help. */
export interface WorksheetParameter {
  readonly name: string;
  /** Meaning, with the units it is read in and its default. */
  readonly says: string;
  readonly optional: boolean;
  /** The last parameter may be given any number of times. */
  readonly repeating: boolean;
  /** The words it takes, where it takes only words. */
  readonly choices?: readonly string[];
}

/** One function as every host sees it. The id is without the namespace: `SEAT.FORCE`, typed as `=MOLD.SEAT.FORCE(`. */
export interface WorksheetFunction {
  readonly id: string;
  readonly family: string;
  readonly summary: string;
  readonly parameters: readonly WorksheetParameter[];
  /** Answers in cells; refusals are `CellError`s in the result. Never throws, never gives NaN, Infinity or blank. */
  call(args: readonly Argument[]): Matrix;
}
