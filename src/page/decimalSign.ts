/** Numbers with units are text to the grid: what is typed with a comma is kept in the standard form. */
import type { Injector } from '@univerjs/core';
import { AFTER_CELL_EDIT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import { inStandardForm } from '../cells/decimalSign';

export function readOwnSign(injector: Injector): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: 10,
    handler: (cell, _, next) => {
      if (typeof cell?.v !== 'string' || cell.f) return next(cell);
      const standard = inStandardForm(cell.v);
      return next(standard === cell.v ? cell : { ...cell, v: standard });
    },
  });
}
