/** Which number format a cell has after an entry: a fraction is shown as it was typed, and nothing typed becomes a day. */
import { CellValueType } from '@univerjs/core';
import type { ICellData, Injector } from '@univerjs/core';
import { AFTER_CELL_EDIT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import { format, getFormatInfo, isDateFormat } from 'numfmt';
import { BEHIND, keptAsEdited } from './editedNumbers';
import { readEntry } from '../cells/entryNumbers';

type Read = NonNullable<ReturnType<typeof readEntry>>;

const GENERAL = 'General';

const typeOf = (pattern: string): string => getFormatInfo(pattern).type;

/** Without texts in quotation marks, single letters behind a backslash, and colors and durations in brackets. */
const namesYear = (pattern: string): boolean => /[ye]/i.test(pattern.replace(/"[^"]*"|\\.|\[[^\]]*\]/g, ''));

/** Undefined where the format stays as it is, or where the grid itself takes that of the entry. */
export function formatAfter(current: string, { v, z }: Read): string | undefined {
  if (z !== undefined && typeOf(z) === 'fraction') return z === current ? undefined : z;
  if (isDateFormat(current)) {
    if (namesYear(current)) return undefined;
    const isTime = typeOf(current) === 'time' && z !== undefined && typeOf(z) === 'time';
    return isTime ? undefined : (z ?? GENERAL);
  }
  // In eighths, 0.3 would be shown as 2/8.
  const isFraction = z === undefined && typeOf(current) === 'fraction';
  const shown = () =>
    format(current, v)
      .replace(/["″]\s*$/, '')
      .trim();
  return isFraction && readEntry(shown())?.v !== v ? GENERAL : undefined;
}

const textOf = (cell: ICellData): string =>
  cell.p?.body?.dataStream.replace(/\r\n$/, '') ?? String(cell.v ?? '');

/** Of what is typed into a cell; to be taken back with it. */
export function formatEntries(injector: Injector): void {
  const { writeCellInterceptor } = injector.get(SheetInterceptorService);
  let text = '';
  // The grid's interceptors stand in a row: the first one sees what was typed, the last one what became of it.
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: 100,
    handler: (cell, _, next) => {
      text = cell ? textOf(cell) : '';
      return next(cell);
    },
  });
  writeCellInterceptor.intercept(AFTER_CELL_EDIT, {
    priority: BEHIND,
    handler: (cell, { workbook, worksheet, row, col }, next) => {
      if (!cell || cell.f || cell.t !== CellValueType.NUMBER) return next(cell);
      const kept = keptAsEdited({ worksheet, row, col }, text);
      if (kept !== undefined) return next({ ...cell, v: kept });
      const read = readEntry(text);
      if (typeof read?.v !== 'number') return next(cell);
      const style = workbook.getStyles().getStyleByCell(worksheet.getCellRaw(row, col));
      const pattern = formatAfter(style?.n?.pattern ?? GENERAL, read);
      // The grid cuts off what is behind the 16th digit.
      return next({ ...cell, v: read.v, ...(pattern !== undefined && { s: { ...style, n: { pattern } } }) });
    },
  });
}
