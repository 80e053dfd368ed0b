/** What stands in the editor of a number: what its cell shows where that is the number itself, else all of its digits. */
import { CellValueType } from '@univerjs/core';
import type { Injector } from '@univerjs/core';
import { BEFORE_CELL_EDIT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import type { Worksheet } from '@univerjs/core';
import { format as formatted, isDateFormat } from 'numfmt';
import { inOwnSign } from '../cells/decimalSign';
import { readEntry } from '../cells/entryNumbers';

interface CellOfGrid {
  readonly worksheet: Worksheet;
  readonly row: number;
  readonly col: number;
}

/** What the editor was last given. */
let edited: (CellOfGrid & { readonly text: string; readonly value: number }) | undefined;

export function noteEdited(given: typeof edited): void {
  edited = given;
}

/** The number of a cell that is entered as its editor showed it: also where no text gives it back to the last digit. */
export function keptAsEdited({ worksheet, row, col }: CellOfGrid, text: string): number | undefined {
  const isIt =
    edited?.worksheet === worksheet && edited.row === row && edited.col === col && edited.text === text;
  return isIt && worksheet.getCellRaw(row, col)?.v === edited?.value ? edited?.value : undefined;
}

/** In the grid's row of interceptors: behind the formats' own (0), before the last one, which ends it (-1). */
export const BEHIND = -0.5;

/** A day with the time that its format does not show. */
const WHOLE_DATE = 'yyyy-mm-dd hh:mm:ss';

/** Undefined where no text that a person would know gives the number back. */
export function editedText(value: number, shown: string, format: string): string | undefined {
  const isPercent = format.includes('%');
  const all = (isPercent ? [`${value * 100}%`, String(value)] : [String(value)]).map((text) =>
    inOwnSign(text.replace('e', 'E')),
  );
  // A percentage comes from its format with a point.
  const choices = isDateFormat(format)
    ? [shown, formatted(WHOLE_DATE, value, { throws: false })]
    : isPercent
      ? all
      : [shown, ...all];
  return choices.find((text) => readEntry(text)?.v === value);
}

/** Entered unchanged, a number must stay the number that it was. */
export function editWholeNumbers(injector: Injector): void {
  injector.get(SheetInterceptorService).writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    priority: BEHIND,
    handler: (shown, { worksheet, workbook, row, col }, next) => {
      const raw = worksheet.getCellRaw(row, col);
      noteEdited(undefined);
      if (!shown || !raw || raw.f || raw.si || typeof raw.v !== 'number' || raw.t !== CellValueType.NUMBER)
        return next(shown);
      const format = workbook.getStyles().getStyleByCell(raw)?.n?.pattern ?? '';
      const told = typeof shown.v === 'number' ? inOwnSign(String(shown.v)) : String(shown.v ?? '');
      const text = editedText(raw.v, told, format) ?? told;
      noteEdited({ worksheet, row, col, text, value: raw.v });
      return next({ ...shown, v: text });
    },
  });
}
