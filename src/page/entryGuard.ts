/** Asks a person about an entry that its rule does not take, before it stays. */
import type { Injector } from '@univerjs/core';
import { SheetInterceptorService, VALIDATE_CELL } from '@univerjs/preset-sheets-core';

/** A cell of the grid by the grid's own ids. */
export interface GridPlace {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly row: number;
  readonly col: number;
}

/** Ours comes before that of the grid's plugin, which knows one answer only and has its own words for it. */
const FIRST = 100;

/** `stays` says whether what was typed stays; it is called before anything is calculated. */
export function guardEntries(injector: Injector, stays: (place: GridPlace) => Promise<boolean>): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(VALIDATE_CELL, {
    priority: FIRST,
    handler: async (before, { unitId, subUnitId, row, col }) => {
      const answer = stays({ unitId, subUnitId, row, col });
      return (await before) !== false && answer;
    },
  });
}
