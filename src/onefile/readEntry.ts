import { isDateFormat } from 'numfmt';
import type { CellValue } from '../cells/value';
import { inStandardForm } from '../cells/decimalSign';
import { parseDate, parseFraction, parseNumber } from '../cells/entryNumbers';

/** What a person typed into a cell of this number format, as the workbook page reads it; undefined for a formula. */
export function readEntry(text: string, numberFormat: string): CellValue | undefined {
  const typed = text.trim();
  if (typed === '') return null;
  if (/^[=@]/.test(typed)) return undefined;
  if (numberFormat === '@') return typed;
  if (typed.startsWith("'")) return typed.slice(1);
  if (/^(true|false)$/i.test(typed)) return /^true$/i.test(typed);
  const read = isDateFormat(numberFormat)
    ? (parseDate(typed) ?? parseNumber(typed))
    : (parseFraction(typed) ?? parseNumber(typed));
  return typeof read?.v === 'number' ? read.v : inStandardForm(typed);
}
