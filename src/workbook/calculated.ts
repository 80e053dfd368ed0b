import type { Argument, CellValue, Matrix } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { Calculator } from './engine/calculator';
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

/** A formula with our functions, and where it stands. */
export interface OurFormula extends Place {
  readonly cell: Cell;
  readonly formula: string;
}

/** A workbook whose formulas have all been calculated anew. Dispose of it when done. */
export class CalculatedWorkbook implements Values {
  private constructor(
    readonly workbook: Workbook,
    private readonly calculator: Calculator,
  ) {}

  static async of(workbook: Workbook, functions: readonly WorksheetFunction[]): Promise<CalculatedWorkbook> {
    const calculator = new Calculator(workbook, functions);
    await calculator.calculate();
    return new CalculatedWorkbook(workbook, calculator);
  }

  at(sheet: Sheet, row: number, column: number): CellValue {
    return this.calculator.value(this.workbook.sheets.indexOf(sheet), row, column);
  }

  spill(sheet: Sheet, row: number, column: number): Area | undefined {
    return this.calculator.spill(this.workbook.sheets.indexOf(sheet), row, column);
  }

  evaluate(formula: string): Promise<Matrix> {
    return this.calculator.evaluate(`=${formula}`);
  }

  dispose(): void {
    this.calculator.dispose();
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
  async callsIn({ formula, ...place }: OurFormula): Promise<CellCall[]> {
    const references = new References(this.workbook, this);
    const calls = outerCalls(formula).map(async ({ id, start, end, args }): Promise<CellCall> => ({
      id,
      text: formula.slice(start, end),
      argTexts: args.map((span) => formula.slice(span.start, span.end).trim()),
      args: await Promise.all(
        args.map(async (span): Promise<Argument> => {
          const text = formula.slice(span.start, span.end).trim();
          if (text === '') return undefined;
          const found = references.read(text, place, false);
          if (found) return found.cells.map((line) => line.map(({ value }) => value));
          return await this.evaluate(references.qualified(text, place));
        }),
      ),
    }));
    return await Promise.all(calls);
  }
}
