/** The sign between whole part and decimals that a person reads and types; files and formulas have the point. */
import type { Injector } from '@univerjs/core';
import { AFTER_CELL_EDIT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import { withComma } from '../cells/numberText';

export type DecimalSign = '.' | ',';

const KEPT = 'moldsheet.decimalSign';

let sign: DecimalSign = '.';

export const decimalSign = (): DecimalSign => sign;

/** The one that was chosen here before, else that of the browser's language. */
export function readDecimalSign(): void {
  const kept = localStorage.getItem(KEPT);
  const own = new Intl.NumberFormat(navigator.language).formatToParts(1.5);
  const found = kept ?? own.find(({ type }) => type === 'decimal')?.value;
  sign = found === ',' ? ',' : '.';
}

export function chooseDecimalSign(chosen: DecimalSign): void {
  sign = chosen;
  localStorage.setItem(KEPT, chosen);
}

/** A number as it is shown, in the person's sign. */
export const inOwnSign = (text: string): string => (sign === ',' ? withComma(text) : text);

/** `0,5` and `0,5 mm` as they are typed, in the standard form; what already has a point stays. */
export function inStandardForm(text: string): string {
  if (sign === '.') return text;
  return text.replace(/^(\s*[+-]?\d*),(\d+)(?![\d.,])/, '$1.$2');
}

/** Numbers with units are text to the grid. */
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
