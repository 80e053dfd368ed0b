import { cellAddress } from '../../cells/address';
import { NAMESPACE } from '../../cells/namespace';
import { CellError, type Argument, type Matrix } from '../../cells/value';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { ArrayValue, Reference, type Value } from '../values';
import { inContext, type Context, type SheetFunction } from './spec';

/** One of our functions as any other; it lifts, reads text and refuses by itself. */
export function ourFunction(one: WorksheetFunction): SheetFunction {
  const name = `${NAMESPACE}.${one.id}`;
  return {
    ...inContext(name, '(A)*', (context, ...args) => {
      const given = args.map((arg) => argumentOf(context, arg));
      try {
        return valueOf(one.call(given));
      } catch (error) {
        return new CellError(
          '#VALUE!',
          `${name} failed: ${error instanceof Error ? error.message : String(error)}`,
        );
      }
    }),
    isOurs: true,
  };
}

/** Left out is null, so that a blank cell (1 × 1 of null) is something else. */
function argumentOf(context: Context, value: Value): Argument {
  if (value === null) return null;
  if (typeof value !== 'object' || value instanceof CellError) return [[value]];
  const rows = rowsOf(context.array(value));
  return value instanceof Reference ? withoutDates(context, value, rows) : rows;
}

/**
 * A number in a date format is no size: what was typed there, a thread or a fraction, may have become a day. Only the
 * cell itself tells.
 */
function withoutDates({ workbook }: Context, { areas }: Reference, rows: Matrix): Matrix {
  const [area] = areas;
  const { isDate } = workbook;
  if (!isDate || !area || areas.length > 1) return rows;
  return rows.map((cells, down) =>
    cells.map((value, right) => {
      const row = area.top + down;
      const column = area.left + right;
      if (typeof value !== 'number' || !isDate(area.sheet, row, column)) return value;
      return new CellError(
        '#VALUE!',
        `${cellAddress(row, column)} is a date: was a thread or a fraction such as 10-24 or 5/8 typed? Give the cell a number format, or the text format for a thread, and type it again`,
      );
    }),
  );
}

function rowsOf(array: ArrayValue): Matrix {
  const { rows, columns } = array;
  const cells = array.dense();
  if (rows === 1) return [cells];
  return Array.from({ length: rows }, (_, row) => cells.slice(row * columns, (row + 1) * columns));
}

function valueOf(matrix: Matrix): Value {
  if (matrix.length === 1 && matrix[0]?.length === 1) return matrix[0][0] ?? null;
  return ArrayValue.of(matrix);
}
