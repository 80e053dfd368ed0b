/** Where a formula is being calculated, and what it may read there. */
import { CellError } from '../../cells/value';
import type { Context, WorkbookView } from '../functions/spec';
import {
  ArrayValue,
  ERRORS,
  Lambda,
  raise,
  Reference,
  type Scalar,
  type SheetArea,
  type Value,
} from '../values';

/** The calculation around formulas, as they need it. */
export interface Reader {
  readonly date1904: boolean;
  /** The value of a cell, calculated first where it is not. */
  read(sheet: number, row: number, column: number): Scalar;
  /** Visits the cells that hold something, row by row where there is one column, else column by column. */
  eachCell(area: SheetArea, visit: (value: Scalar, row: number, column: number) => void): void;
  array(area: SheetArea): ArrayValue;
  memo<T>(area: SheetArea, key: string, make: () => T): T;
  tick(steps: number): void;
  /** Runs a LAMBDA's body; refuses where they call one another too deeply. */
  deeper(body: () => Value): Value;
  now(): number;
  random(): number;
  readonly view: WorkbookView;
}

/** The variables of LET and the parameters of LAMBDA, the innermost first. */
export interface Scope {
  readonly value: Value | undefined;
  readonly outer: Scope | undefined;
}

export class Frame implements Context {
  constructor(
    readonly book: Reader,
    readonly sheet: number,
    readonly row: number,
    readonly column: number,
    readonly scope: Scope | undefined,
  ) {}

  get workbook(): WorkbookView {
    return this.book.view;
  }

  get date1904(): boolean {
    return this.book.date1904;
  }

  within(value: Value | undefined, scope: Scope | undefined = this.scope): Frame {
    return new Frame(this.book, this.sheet, this.row, this.column, { value, outer: scope });
  }

  array(value: Value): ArrayValue {
    if (value instanceof ArrayValue) return value;
    if (value instanceof Reference) {
      const [area, ...more] = value.areas;
      return area && more.length === 0 ? this.book.array(area) : raise('#VALUE!');
    }
    return value instanceof Lambda ? raise('#VALUE!') : new ArrayValue(1, 1, [value]);
  }

  each(value: Value, visit: (value: Scalar) => void): void {
    if (value instanceof Reference) {
      for (const area of value.areas) this.book.eachCell(area, visit);
    } else if (value instanceof ArrayValue) {
      this.tick(value.stored.length);
      value.each((one, times) => {
        for (let i = 0; i < times; i++) visit(one);
      });
    } else visit(value instanceof Lambda ? raise('#VALUE!') : value);
  }

  memo<T>(reference: Reference, key: string, make: () => T): T {
    const [area, ...more] = reference.areas;
    return area && more.length === 0 ? this.book.memo(area, key, make) : make();
  }

  tick(steps = 1): void {
    this.book.tick(steps);
  }

  now(): number {
    return this.book.now();
  }

  random(): number {
    return this.book.random();
  }

  /** A value as a scalar where it is one or lies in one cell, else as an array. */
  plain(value: Value): Scalar | ArrayValue {
    if (value instanceof Reference) {
      const [area, ...more] = value.areas;
      if (!area || more.length > 0) return ERRORS['#VALUE!'];
      if (area.top === area.bottom && area.left === area.right) {
        return this.book.read(area.sheet, area.top, area.left);
      }
      return this.book.array(area);
    }
    if (value instanceof ArrayValue) return value.rows === 1 && value.columns === 1 ? value.at(0, 0) : value;
    return value instanceof Lambda ? LAMBDA_AS_VALUE : value;
  }

  /** The one cell of a range that an old formula means: of a column the one in its row, of a row the one in its column. */
  one(value: Value): Scalar {
    if (value instanceof ArrayValue) return value.at(0, 0);
    if (value instanceof Lambda) return LAMBDA_AS_VALUE;
    if (!(value instanceof Reference)) return value;
    const [area, ...more] = value.areas;
    if (!area || more.length > 0) return ERRORS['#VALUE!'];
    const { sheet, top, bottom, left, right } = area;
    const row = top === bottom ? top : this.row;
    const column = left === right ? left : this.column;
    const isMet = row >= top && row <= bottom && column >= left && column <= right;
    return isMet ? this.book.read(sheet, row, column) : ERRORS['#VALUE!'];
  }
}

const LAMBDA_AS_VALUE = new CellError('#CALC!', 'A LAMBDA is no value: call it, as in LAMBDA(x,x+1)(2).');
