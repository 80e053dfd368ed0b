import type { Matrix } from '../../cells/value';
import { CellError } from '../../cells/value';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import type { Workbook } from '../../package/model';
import { Calculator } from './calculator';
import { explain } from './explain';

const NOTHING: Workbook = {
  sheets: [],
  activeSheet: 0,
  names: [],
  styles: [],
  date1904: false,
  parts: new Map(),
};

/** Works out formulas that stand in no workbook, each by itself; every error says why. */
export async function calculateFormulas(
  formulas: readonly string[],
  functions: readonly WorksheetFunction[],
): Promise<Matrix[]> {
  const calculator = new Calculator(NOTHING, functions);
  try {
    const results: Matrix[] = [];
    for (const formula of formulas) {
      const values = await valuesOf(formula, calculator);
      results.push(
        values.map((row) =>
          row.map((value) =>
            value instanceof CellError ? explain(value, formula, { calculator, functions }) : (value ?? 0),
          ),
        ),
      );
    }
    return results;
  } finally {
    calculator.dispose();
  }
}

/** A formula on which a native function of the engine fails must not take the others with it. */
async function valuesOf(formula: string, calculator: Calculator): Promise<Matrix> {
  try {
    return await calculator.evaluate(formula.startsWith('=') ? formula : `=${formula}`);
  } catch (fault) {
    const said = fault instanceof Error ? fault.message : String(fault);
    return [[new CellError('#VALUE!', `The formula engine failed on it: ${said}`)]];
  }
}
