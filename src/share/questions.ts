import { cellAddress, quotedSheet, type Area } from '../cells/address';
import { CellError, type CellValue } from '../cells/value';
import { nativeNumber } from '../core/expr/native';
import { allOf } from '../derive/native';
import type { Sheet } from '../package/model';
import { constantText, type Place } from '../workbook/references';

/** So many cells have a question of their own; of more, this many share one. */
const MOST_QUESTIONS = 400;
const SHARED = 20;

/** A condition on the cells of a copy, and what it asks about. */
export interface Question {
  readonly symbol: string;
  readonly text: string;
}

export interface WatchedCell extends Place {
  /** With the name of its sheet. */
  readonly text: string;
}

export function inGroups(questions: readonly Question[]): readonly Question[] {
  if (questions.length <= MOST_QUESTIONS) return questions;
  return Array.from({ length: Math.ceil(questions.length / SHARED) }, (_, i): Question => {
    const own = questions.slice(i * SHARED, (i + 1) * SHARED);
    const symbol = `${own[0]?.symbol ?? ''} and ${own.length - 1} more`;
    return { symbol, text: allOf(own.map(({ text }) => text)) };
  });
}

export const sizeOf = ({ top, left, bottom, right }: Area): number => (bottom - top + 1) * (right - left + 1);

export function cellsIn(sheet: Sheet, { top, left, bottom, right }: Area): WatchedCell[] {
  return Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (__, across) => {
      const [row, column] = [top + down, left + across];
      return { sheet, row, column, text: `${quotedSheet(sheet.name)}!${cellAddress(row, column)}` };
    }),
  ).flat();
}

/** Longer texts are compared by their beginning. */
export const COMPARED = 200;

/** Whether a cell holds what it held when the copy was made; numbers that are calculated differ in their last digits. */
export function stillIs(cell: string, value: CellValue): string {
  if (value instanceof CellError) return `ISERROR(${cell})`;
  if (value === null) return `ISBLANK(${cell})`;
  if (typeof value === 'number') {
    const same = value === 0 ? `${cell}=0` : `ABS(${cell}-${nativeNumber(value)})<=1E-9*ABS(${cell})`;
    return `IF(AND(ISNUMBER(${cell}),NOT(ISLOGICAL(${cell}))),${same},FALSE)`;
  }
  if (typeof value === 'boolean') return `IF(ISLOGICAL(${cell}),${cell}=${constantText(value)},FALSE)`;
  const same =
    value.length > COMPARED
      ? `EXACT(LEFT(${cell},${COMPARED}),${constantText(value.slice(0, COMPARED))})`
      : `EXACT(${cell},${constantText(value)})`;
  return `IF(ISTEXT(${cell}),${same},FALSE)`;
}
