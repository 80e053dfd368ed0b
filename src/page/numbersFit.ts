import { BooleanNumber, CellValueType, InterceptorEffectEnum, isDefaultFormat } from '@univerjs/core';
import type { ICellData, IStyleData, Injector, Nullable, Worksheet } from '@univerjs/core';
import { INTERCEPTOR_POINT, SheetInterceptorService } from '@univerjs/preset-sheets-core';
import { isDateFormat } from 'numfmt';
import { generalText } from '../cells/numberText';
import { inOwnSign } from '../cells/decimalSign';

/** Pixels of a cell that its text does not use. */
const MARGIN = 6;

/**
 * Numbers that are wider than their column lose decimals or become ####: cut off, as the grid would draw them,
 * they read as other numbers.
 */
export function fitNumbers(injector: Injector): void {
  const measure = textMeasure();
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Value,
    // Behind the number's format (10), before the grid's own last one (-1), which ends the row.
    priority: 0,
    handler: (cell, { worksheet, workbook, row, col, rawData }, next) => {
      if (!cell || cell.t !== CellValueType.NUMBER || cell.v === undefined || cell.v === null)
        return next(cell);
      const style = workbook.getStyles().getStyleByCell(cell);
      const room = widthOf(worksheet, row, col) - MARGIN;
      const fits = (text: string) => measure(text, style) <= room;
      const value = Number(rawData?.v ?? cell.v);
      const plain = !style?.n || isDefaultFormat(style.n.pattern);
      const text = plain && Number.isFinite(value) ? generalText(value, fits) : fitting(String(cell.v), fits);
      const told = text ?? hashes(fits);
      const shown = isDateFormat(style?.n?.pattern ?? '') ? told : inOwnSign(told);
      return next(shown === String(cell.v) ? cell : ({ ...cell, v: shown } satisfies Nullable<ICellData>));
    },
  });
}

const fitting = (text: string, fits: (text: string) => boolean) => (fits(text) ? text : undefined);

function hashes(fits: (text: string) => boolean): string {
  let text = '#';
  while (text.length < 40 && fits(`${text}#`)) text += '#';
  return text;
}

function widthOf(sheet: Worksheet, row: number, column: number): number {
  const merged = sheet.getMergedCell(row, column);
  let width = 0;
  for (let at = merged?.startColumn ?? column; at <= (merged?.endColumn ?? column); at++) {
    width += sheet.getColumnWidth(at);
  }
  return width;
}

/** Measures text in a cell's font; the same text in the same font is measured once. */
function textMeasure(): (text: string, style: Nullable<IStyleData>) => number {
  const context = document.createElement('canvas').getContext('2d');
  const known = new Map<string, number>();
  return (text, style) => {
    const { ff = 'Arial', fs = 11, bl, it } = style ?? {};
    const bold = bl === BooleanNumber.TRUE ? 'bold ' : '';
    const italic = it === BooleanNumber.TRUE ? 'italic ' : '';
    const font = `${italic}${bold}${fs}pt "${ff ?? 'Arial'}"`;
    const key = `${font}|${text}`;
    let width = known.get(key);
    if (width === undefined) {
      if (!context) return 0;
      if (known.size > 50_000) known.clear();
      context.font = font;
      known.set(key, (width = context.measureText(text).width));
    }
    return width;
  };
}
