/** What a formula can have as its value, or as a part of it. */
import type { Area } from '../cells/address';
import { CellError, type ErrorCode } from '../cells/value';

/** What one cell holds; `null` is a blank cell or an empty argument. */
export type Scalar = number | string | boolean | null | CellError;

/** Cells of one sheet, by the sheet's index in the workbook. */
export interface SheetArea extends Area {
  readonly sheet: number;
}

export type Value = Scalar | ArrayValue | Reference | Lambda;

/**
 * Rows and columns of scalars. The last rows may all be the same (`tail`) and are then not stored: a whole column is
 * as long as its used part. So read by `at`, `each` or `dense`, not from `stored` alone.
 */
export class ArrayValue {
  /** How many rows are stored; `tail` stands in the rest. */
  readonly storedRows: number;

  constructor(
    readonly rows: number,
    readonly columns: number,
    /** Row by row. */
    readonly stored: Scalar[],
    readonly tail: Scalar = null,
  ) {
    this.storedRows = columns === 0 ? 0 : stored.length / columns;
  }

  at(row: number, column: number): Scalar {
    return row < this.storedRows ? (this.stored[row * this.columns + column] as Scalar) : this.tail;
  }

  get size(): number {
    return this.rows * this.columns;
  }

  /** Every scalar, row by row; for the tail once, with how often it stands there. */
  each(visit: (value: Scalar, times: number) => void): void {
    for (const value of this.stored) visit(value, 1);
    const rest = this.size - this.stored.length;
    if (rest > 0) visit(this.tail, rest);
  }

  /** Every scalar, row by row, the tail written out. */
  dense(): Scalar[] {
    const rest = this.size - this.stored.length;
    if (rest === 0) return this.stored;
    return this.stored.concat(
      new Array<Scalar>(boundedSize(this.rows, this.columns) - this.stored.length).fill(this.tail),
    );
  }

  static of(rows: readonly (readonly Scalar[])[]): ArrayValue {
    return new ArrayValue(rows.length, rows[0]?.length ?? 0, rows.flat());
  }

  /** Made by a rule; refuses what is too large to hold. */
  static build(rows: number, columns: number, make: (row: number, column: number) => Scalar): ArrayValue {
    const cells = new Array<Scalar>(boundedSize(rows, columns));
    for (let row = 0, at = 0; row < rows; row++) {
      for (let column = 0; column < columns; column++) cells[at++] = make(row, column);
    }
    return new ArrayValue(rows, columns, cells);
  }
}

/** The largest array that is held: about four full columns of a sheet. */
const MOST_CELLS = 4_194_304;

/** Whether the cells of an area can be held at once. */
export const canBeHeld = ({ top, left, bottom, right }: Area): boolean =>
  (bottom - top + 1) * (right - left + 1) <= MOST_CELLS;

/** Rows times columns; raises `#NUM!` where that is more than is ever held in memory. */
export function boundedSize(rows: number, columns: number): number {
  const size = rows * columns;
  if (!(size <= MOST_CELLS)) {
    throw new Raised(new CellError('#NUM!', `An array of ${rows} × ${columns} cells is too large.`));
  }
  return size;
}

/** Cells by their place; a union, or the same cells of several sheets, has several areas. */
export class Reference {
  constructor(readonly areas: readonly SheetArea[]) {}

  static cell(sheet: number, row: number, column: number): Reference {
    return new Reference([{ sheet, top: row, left: column, bottom: row, right: column }]);
  }
}

/** A function made by a formula. */
export class Lambda {
  constructor(
    readonly least: number,
    readonly most: number,
    /** The arguments as many as given; `undefined` where one was left out. */
    readonly call: (args: readonly (Value | undefined)[]) => Value,
  ) {}
}

/** An error on its way out of nested calculation: the result of the function, or of the formula, is this error. */
export class Raised extends Error {
  override readonly name = 'Raised';
  constructor(readonly cell: CellError) {
    super(cell.message);
  }
}

/** The errors without words of their own. */
export const ERRORS: Readonly<Record<ErrorCode, CellError>> = {
  '#VALUE!': new CellError('#VALUE!'),
  '#N/A': new CellError('#N/A'),
  '#NUM!': new CellError('#NUM!'),
  '#DIV/0!': new CellError('#DIV/0!'),
  '#REF!': new CellError('#REF!'),
  '#NAME?': new CellError('#NAME?'),
  '#NULL!': new CellError('#NULL!'),
  '#SPILL!': new CellError('#SPILL!'),
  '#CALC!': new CellError('#CALC!'),
};

/** Made once: a trace of the stack costs more than the calculation that ends with it. */
const RAISED = Object.fromEntries(
  Object.entries(ERRORS).map(([code, cell]) => [code, new Raised(cell)]),
) as Readonly<Record<ErrorCode, Raised>>;

/** Ends the function with an error: `return raise('#NUM!')` where a value is wanted. */
export function raise(error: ErrorCode | CellError): never {
  if (typeof error === 'string') throw RAISED[error];
  throw RAISED[error.code].cell === error ? RAISED[error.code] : new Raised(error);
}

/**
 * What is not known well enough to be calculated. The cell keeps the value that is stored in the file, marked with
 * the reason; a cell without a stored value is `#NAME?`.
 */
export class Keep extends Error {
  override readonly name = 'Keep';
}
