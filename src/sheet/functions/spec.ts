/**
 * How a worksheet function is declared: its name, what it takes, and what it does.
 *
 * `takes` has one letter a parameter, then `?` where the parameter may be left out; `(…)+` at the end repeats its
 * letters one or more times, `(…)*` any number of times.
 *
 * | letter | the function is given | an array, or a range of several cells, there |
 * |---|---|---|
 * | `n` `t` `b` | a number, text or truth value, read as a spreadsheet reads it | calls once a cell ("lifting"); an error in a cell is its answer |
 * | `s` | any scalar but an error | the same |
 * | `v` | any scalar, errors too | the same |
 * | `f` | as `s`, for the functions that once came as an add-in | an array as under `s`; several cells of a range are `#VALUE!` |
 * | `r` | what was written: reference, array, scalar, function | as it is |
 * | `p` | as `r`, but only where its cells are counts: they are not calculated for it (ROW, COLUMNS, OFFSET) | as it is |
 * | `a` | an array; its expression is calculated as in an array formula | as it is |
 * | `A` | as `r`, calculated as in an array formula | as it is |
 * | `l` | a way to calculate the argument, called where it is wanted | as it is |
 *
 * A parameter left out at the end is `undefined`, so a default value of the JavaScript parameter serves. One left
 * empty between commas is `null` (as a blank cell: 0, "", FALSE under `n`, `t`, `b`). A blank cell under `r` is still a
 * `Reference`, so there `null` means empty alone.
 *
 * A function answers with a value or raises an error (`raise`). What is not finite becomes `#NUM!`. A fault (any other
 * exception) is "kept", as `Keep` is: never a wrong value.
 */
import type { ArrayValue, Reference, Scalar, SheetArea, Value } from '../values';
import type { CellError } from '../../cells/value';

export interface Given {
  n: number;
  t: string;
  b: boolean;
  s: Exclude<Scalar, CellError>;
  v: Scalar;
  f: Exclude<Scalar, CellError>;
  r: Value;
  p: Value;
  a: ArrayValue;
  A: Value;
  l: Lazy;
}
export type Letter = keyof Given;
export type Lazy = () => Value;

/** The types of the arguments that a text of letters asks for. */
export type Arguments<T extends string> = T extends ''
  ? []
  : T extends `(${infer Group})+` | `(${infer Group})*`
    ? Given[LettersOf<Group>][]
    : T extends `${infer L extends Letter}?${infer Rest}`
      ? [argument?: Given[L], ...rest: Arguments<Rest>]
      : T extends `${infer L extends Letter}${infer Rest}`
        ? [argument: Given[L], ...rest: Arguments<Rest>]
        : never;
type LettersOf<T extends string> = T extends `${infer L extends Letter}${infer Rest}`
  ? L | LettersOf<Rest>
  : never;

/** What a function may ask of the calculation around it. */
export interface Context {
  /** The cell whose formula is calculated. */
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  readonly date1904: boolean;
  /** Cells of a reference as an array, blanks as `null`. Several areas raise `#VALUE!`. */
  array(value: Value): ArrayValue;
  /**
   * Every scalar of a value: of a reference only the cells that hold something, column by column; of an array all. Where
   * the order or the blanks count, ask for the `array`.
   */
  each(value: Value, visit: (value: Scalar) => void): void;
  /** Something that is costly to make of a reference (an index for looking up), kept until one of its cells changes. */
  memo<T>(reference: Reference, key: string, make: () => T): T;
  /** Say in long loops how many steps were done: ends the calculation when its time is over or it was stopped. */
  tick(steps?: number): void;
  /** The serial number of now, the same through one calculation. */
  now(): number;
  /** From 0 to 1, anew at each call. */
  random(): number;
  readonly workbook: WorkbookView;
}

/** What a few functions ask about the workbook beyond its values. Rows, columns and sheets count from 0. */
export interface WorkbookView {
  readonly sheetNames: readonly string[];
  /** The characters above 127 that CHAR and CODE count are not those of Windows. */
  readonly isFromMacintosh: boolean;
  /** Whether a cell is in a date format; absent where no cell is. */
  readonly isDate?: (sheet: number, row: number, column: number) => boolean;
  /** The text of a cell's formula without its `=`. */
  formulaAt(sheet: number, row: number, column: number): string | undefined;
  /** The cells that the formula of a cell fills; its own where it fills no other. */
  spillAt(sheet: number, row: number, column: number): SheetArea | undefined;
  /** Whether a row is hidden, and whether a filter did that. */
  hiddenRow(sheet: number, row: number): 'filtered' | 'hidden' | undefined;
  /** What a text such as `Sheet1!A1:B3` or a name refers to, as if written in a cell; an error where nothing. */
  refer(text: string, sheet: number, row: number, column: number): Value;
}

export interface SheetFunction {
  readonly name: string;
  readonly parameters: Parameters;
  /** Calculated anew whenever anything is: NOW, RAND and their kind. */
  readonly isVolatile: boolean;
  /** One of our own functions: its cell is never kept, it has a value or an error. */
  readonly isOurs: boolean;
  readonly call: (context: Context, args: readonly unknown[]) => Value;
}

export interface Parameters {
  readonly letters: readonly Letter[];
  /** The letters that repeat behind them; empty where none do. */
  readonly repeated: readonly Letter[];
  readonly least: number;
  readonly most: number;
}

/** Excel's limit of arguments. */
const MOST_ARGUMENTS = 255;

export function readParameters(takes: string): Parameters {
  const [, single = '', repeated = '', sign] = /^([a-zA-Z?]*)(?:\(([a-zA-Z]+)\)([+*]))?$/.exec(takes) ?? [];
  const letters = Array.from(single.replaceAll('?', '')) as Letter[];
  const needed = single.includes('?') ? single.indexOf('?') - 1 : letters.length;
  return {
    letters,
    repeated: Array.from(repeated) as Letter[],
    least: needed + (sign === '+' ? repeated.length : 0),
    most: repeated === '' ? letters.length : MOST_ARGUMENTS,
  };
}

/** A function of its arguments alone. */
export function plain<const T extends string>(
  name: string,
  takes: T,
  call: (...args: Arguments<T>) => Value,
): SheetFunction {
  const run = call as (...args: readonly unknown[]) => Value;
  return {
    name,
    parameters: readParameters(takes),
    isVolatile: false,
    isOurs: false,
    call: (_, args) => run(...args),
  };
}

/** A function that reads references or asks for the date, the time limit and so on. */
export function inContext<const T extends string>(
  name: string,
  takes: T,
  call: (context: Context, ...args: Arguments<T>) => Value,
): SheetFunction {
  const run = call as (context: Context, ...args: readonly unknown[]) => Value;
  return {
    name,
    parameters: readParameters(takes),
    isVolatile: false,
    isOurs: false,
    call: (context, args) => run(context, ...args),
  };
}

export const volatile = (one: SheetFunction): SheetFunction => ({ ...one, isVolatile: true });
