/** Rows sorted and cells turned, as cells to be written. */
import { shiftFormula } from '../../package/shiftFormula';
import type { CellValue } from '../../cells/value';
import { gridScalar } from '../gridData';
import { sortedPlaces } from '../sortRows';
import type { WrittenCell, WrittenCells } from '../writeCells';

export interface SourceCell {
  readonly value: CellValue;
  readonly formula?: string;
  /** The grid's own look of the cell; it goes along. */
  readonly look: WrittenCell['s'];
}

export interface SourceRow {
  readonly row: number;
  readonly cells: readonly SourceCell[];
}

/** A value without a formula. */
export const valueCell = (value: CellValue): WrittenCell => ({
  v: null,
  t: null,
  ...gridScalar(value),
  f: null,
  si: null,
  p: null,
});

export const formulaCell = (formula: string): WrittenCell => ({
  f: `=${formula}`,
  v: null,
  t: null,
  si: null,
  p: null,
});

/** The places of the rows that hold what each row is to hold; undefined where all stay. */
export function sortedOrder(
  rows: readonly SourceRow[],
  key: number,
  descending: boolean,
): readonly number[] | undefined {
  const order = sortedPlaces(
    rows.map(({ cells }) => cells[key]?.value ?? null),
    descending,
  );
  return order.every((from, to) => from === to) ? undefined : order;
}

/** Formulas read as if they had been copied: what they name beside them in their row goes along. */
export function sortedCells(
  rows: readonly SourceRow[],
  order: readonly number[],
  left: number,
): WrittenCells {
  const written: WrittenCells = {};
  order.forEach((from, to) => {
    const [source, target] = [rows[from], rows[to]];
    if (!source || !target || from === to) return;
    written[target.row] = Object.fromEntries(
      source.cells.map(({ value, formula, look }, at) => [
        left + at,
        {
          ...(formula === undefined
            ? valueCell(value)
            : formulaCell(shiftFormula(formula, target.row - source.row, 0))),
          s: look ?? null,
        },
      ]),
    );
  });
  return written;
}

/** Values with their looks, rows as columns, from a cell on. */
export function turnedCells(
  rows: readonly SourceRow[],
  to: { readonly row: number; readonly column: number },
): WrittenCells {
  const written: WrittenCells = {};
  rows.forEach(({ cells }, across) => {
    cells.forEach(({ value, look }, down) => {
      (written[to.row + down] ??= {})[to.column + across] = { ...valueCell(value), s: look ?? null };
    });
  });
  return written;
}
