/** Cells with a note have a mark in their corner. */
import { InterceptorEffectEnum } from '@univerjs/core';
import type { Injector } from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/preset-sheets-core';

const MARK = { tr: { size: 7, color: '#B5651D' } };

export function markNotes(
  injector: Injector,
  hasNote: (unitId: string, sheetId: string, row: number, column: number) => boolean,
): void {
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style,
    priority: 5,
    handler: (cell, { unitId, subUnitId, row, col, rawData }, next) => {
      if (!hasNote(unitId, subUnitId, row, col)) return next(cell);
      const own = cell === rawData ? { ...rawData } : { ...cell };
      return next({ ...own, markers: { ...own.markers, ...MARK } });
    },
  });
}
