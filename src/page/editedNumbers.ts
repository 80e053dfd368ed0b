/** What stands in the editor of a number: what its cell shows where that is the number itself, else all of its digits. */
import { CellValueType } from '@univerjs/core';
import type { Injector } from '@univerjs/core';
import { BEFORE_CELL_EDIT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import { isDateFormat } from 'numfmt';
import { inOwnSign } from './decimalSign';
import { parseDate, parseNumber, parseTime } from './entryNumbers';

const read = (text: string): unknown => (parseDate(text) ?? parseTime(text) ?? parseNumber(text))?.v;

/** Undefined where no text that a person would know gives the number back. */
export function editedText(value: number, shown: string, format: string): string | undefined {
  const isPercent = format.includes('%');
  const all = (isPercent ? [`${value * 100}%`, String(value)] : [String(value)]).map((text) =>
    inOwnSign(text.replace('e', 'E')),
  );
  // A percentage comes from its format with a point.
  const choices = isDateFormat(format) ? [shown] : isPercent ? all : [shown, ...all];
  return choices.find((text) => read(text) === value);
}

/** Entered unchanged, a number must stay the number that it was. */
export function editWholeNumbers(injector: Injector): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    // Around the formats' own.
    priority: 100,
    handler: (cell, { worksheet, workbook, row, col }, next) => {
      const edited = next(cell);
      const raw = worksheet.getCellRaw(row, col);
      if (!edited || !raw || raw.f || raw.si || raw.t !== CellValueType.NUMBER) return edited;
      const format = workbook.getStyles().getStyleByCell(raw)?.n?.pattern ?? '';
      const text = editedText(Number(raw.v), String(edited.v ?? ''), format);
      return text === undefined ? edited : { ...edited, v: text };
    },
  });
}
