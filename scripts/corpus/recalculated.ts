import type { Workbook } from '../../src/package/model';
import { worksheetFunctions } from '../../src/call/functions';
import { Book } from '../../src/sheet/book';
import type { Recalculated } from './score';

/** The workbook's formulas calculated anew. */
export function recalculated(workbook: Workbook): Recalculated {
  const book = new Book(workbook, worksheetFunctions);
  book.calculate();
  return (sheet, row, column) => {
    const kept = book.keptReason(sheet, row, column);
    return { value: book.value(sheet, row, column), ...(kept === undefined ? {} : { kept }) };
  };
}
