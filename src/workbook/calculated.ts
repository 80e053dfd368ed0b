import type { Argument, CellValue, Matrix } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { Book, type CellPlace, type Edit, type KeptCell } from '../sheet/book';
import type { Limits } from '../sheet/budget';
import { basisReasons, type Reasons } from './basis';
import { contentOf } from './content';
import type { Area } from '../cells/address';
import type { Cell, Sheet, Workbook } from '../package/model';
import { callsOurs } from '../package/spelling';
import { outerCalls } from './calls';
import { References, type Place, type Values } from './references';

/** A call of ours in a cell, with its arguments as they are now. */
export interface CellCall {
  readonly id: string;
  /** The call alone, without its `=`. */
  readonly text: string;
  readonly args: readonly Argument[];
  /** What is typed for each argument. */
  readonly argTexts: readonly string[];
}

/** Cells of one sheet. */
export interface SheetRange {
  readonly sheet: Sheet;
  readonly area: Area;
}

export interface Reads {
  readonly areas: readonly SheetRange[];
  /** It may read what its text does not name, as INDIRECT does, or the time. */
  readonly isVolatile: boolean;
}

/** A formula with our functions, and where it stands. */
export interface OurFormula extends Place {
  readonly cell: Cell;
  readonly formula: string;
}

/** A workbook whose formulas have all been calculated anew. */
export class CalculatedWorkbook implements Values {
  private constructor(
    readonly workbook: Workbook,
    private readonly book: Book,
  ) {}

  static of(
    workbook: Workbook,
    functions: readonly WorksheetFunction[],
    limits?: Limits,
  ): CalculatedWorkbook {
    const book = new Book(contentOf(workbook), functions);
    book.calculate(limits);
    return new CalculatedWorkbook(workbook, book);
  }

  at(sheet: Sheet, row: number, column: number): CellValue {
    return this.book.value(this.workbook.sheets.indexOf(sheet), row, column);
  }

  spill(sheet: Sheet, row: number, column: number): Area | undefined {
    return this.book.spill(this.workbook.sheets.indexOf(sheet), row, column);
  }

  evaluate(formula: string, place?: CellPlace): Matrix {
    return this.book.evaluate(formula, place);
  }

  /** Puts values into cells and calculates what depends on them; the workbook itself stays as it was read. */
  change(edits: readonly Edit[], limits?: Limits): void {
    this.book.set(edits);
    this.book.calculate(limits);
  }

  isRead(place: CellPlace): boolean {
    return this.book.readers(place).length > 0;
  }

  /** What the formula of a cell reads, with all that a spill fills whose first cell it names. */
  reads(sheet: Sheet, row: number, column: number): Reads {
    const place = { sheet: this.workbook.sheets.indexOf(sheet), row, column };
    const areas = this.book.reads(place).flatMap(({ sheet: index, ...area }): SheetRange[] => {
      const other = this.workbook.sheets[index];
      if (!other) return [];
      const isCell = area.top === area.bottom && area.left === area.right;
      const spill = isCell ? this.book.spill(index, area.top, area.left) : undefined;
      return [{ sheet: other, area: spill ?? area }];
    });
    return { areas, isVolatile: this.book.isVolatile(place) };
  }

  /** Whether a formula reads the cell. */
  isReadAt(sheet: Sheet, row: number, column: number): boolean {
    return this.isRead({ sheet: this.workbook.sheets.indexOf(sheet), row, column });
  }

  /** Whether a formula fills the cell. */
  isFormula(sheet: Sheet, row: number, column: number): boolean {
    return this.book.formulaAt({ sheet: this.workbook.sheets.indexOf(sheet), row, column }) !== undefined;
  }

  kept(): readonly KeptCell[] {
    return this.book.keptCells();
  }

  basisReasons(
    functions: readonly WorksheetFunction[],
    changed: Parameters<typeof basisReasons>[3],
  ): Reasons {
    return basisReasons(this.workbook, this.book, functions, changed);
  }

  ourFormulas(): OurFormula[] {
    return this.workbook.sheets.flatMap((sheet) =>
      sheet.cells.flatMap((cell): OurFormula[] => {
        const { row, column, formula } = cell;
        return formula !== undefined && callsOurs(formula) ? [{ sheet, cell, row, column, formula }] : [];
      }),
    );
  }

  /** The outermost calls of a formula with their arguments. */
  callsIn({ formula, ...place }: OurFormula): CellCall[] {
    const references = new References(this.workbook, this);
    return outerCalls(formula).map(({ id, start, end, args }): CellCall => ({
      id,
      text: formula.slice(start, end),
      argTexts: args.map((span) => formula.slice(span.start, span.end).trim()),
      args: args.map((span): Argument => {
        const text = formula.slice(span.start, span.end).trim();
        if (text === '') return undefined;
        const found = references.read(text, place, false);
        if (found) return found.cells.map((line) => line.map(({ value }) => value));
        return this.evaluate(references.qualified(text, place));
      }),
    }));
  }
}
