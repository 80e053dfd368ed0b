/// <reference types="office-js" />
import { isOurs, typedFormula } from './formulas';

export interface Reentered {
  /** Formulas entered again. */
  readonly count: number;
  /** Protected sheets with formulas that need it. */
  readonly locked: readonly string[];
}

/**
 * Enters our formulas again where Excel has lost the add-in behind them: `#NAME?` heals by nothing else, not even by a
 * full recalculation. `sheets` limits it to the sheets with these ids.
 */
export const reenterFormulas = (sheets?: readonly string[]): Promise<Reentered> =>
  Excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load('items/id,items/name');
    await context.sync();
    const chosen = worksheets.items.filter(({ id }) => !sheets || sheets.includes(id));
    const used = chosen.map((sheet) => {
      const range = sheet.getUsedRangeOrNullObject();
      range.load('formulas,values,rowIndex,columnIndex');
      sheet.protection.load('protected');
      return { sheet, range };
    });
    await context.sync();

    let count = 0;
    const locked: string[] = [];
    for (const { sheet, range } of used) {
      const lost = range.isNullObject ? [] : lostFormulas(range.formulas, range.values);
      if (lost.length === 0) continue;
      if (sheet.protection.protected) {
        locked.push(sheet.name);
        continue;
      }
      for (const { row, column, formula } of lost) range.getCell(row, column).formulas = [[formula]];
      count += lost.length;
    }
    await context.sync();
    return { count, locked };
  });

const lostFormulas = (
  formulas: unknown[][],
  values: unknown[][],
): { row: number; column: number; formula: string }[] =>
  formulas.flatMap((cells, row) =>
    cells.flatMap((content, column) => {
      if (typeof content !== 'string' || !content.startsWith('=') || !isOurs(content)) return [];
      const formula = typedFormula(content);
      return values[row]?.[column] === '#NAME?' || formula !== content ? [{ row, column, formula }] : [];
    }),
  );
