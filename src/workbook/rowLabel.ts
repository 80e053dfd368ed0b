import type { CellValue } from '../cells/value';
import type { Sheet } from '../package/model';

interface Values {
  at(sheet: Sheet, row: number, column: number): CellValue;
}

/** What a sheet calls a cell: the first text of its row, before it. */
export function rowLabel(book: Values, sheet: Sheet, row: number, column: number): string {
  for (let at = 0; at < column; at++) {
    const value = book.at(sheet, row, at);
    if (typeof value === 'string' && value !== '') return value;
  }
  return '';
}
