import type { Matrix } from '../cells/value';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { Book } from '../sheet/book';
import type { Limits } from '../sheet/budget';
import type { BookContent } from '../sheet/content';

const EMPTY: BookContent = {
  sheets: [{ name: 'Sheet1', cells: [], tables: [], rows: [] }],
  names: [],
  date1904: false,
};

/** Works out formulas that stand in no workbook, each by itself; every error says why. Rejects where the limits end it. */
export function calculateFormulas(
  formulas: readonly string[],
  functions: readonly WorksheetFunction[],
  limits?: Limits,
): Promise<Matrix[]> {
  return new Promise((resolve) => {
    const book = new Book(EMPTY, functions);
    resolve(
      formulas.map((formula) =>
        book
          .evaluate(formula.replace(/^\s*=/, ''), undefined, limits)
          .map((row) => row.map((value) => value ?? 0)),
      ),
    );
  });
}
