/** Cells that a person must not overlook: formulas in error, and verdicts that something does not hold. */
import type { Area } from '../cells/address';
import { CellError, type CellValue } from '../cells/value';
import { eachPlace } from '../sheet/graph/dependents';
import type { CellPlace } from '../sheet/book';

const isTrouble = (value: CellValue): boolean =>
  value instanceof CellError || (typeof value === 'string' && value.trimStart().startsWith('✗'));

export class Troubles {
  /** By the formula's own cell, which may fill others. */
  private readonly found = new Map<string, readonly CellPlace[]>();

  clear(): void {
    this.found.clear();
  }

  forget(formula: CellPlace): void {
    this.found.delete(keyOf(formula));
  }

  /** A formula has a new result. */
  note(formula: CellPlace, area: Area | undefined, value: (row: number, column: number) => CellValue): void {
    const cells: CellPlace[] = [];
    const { sheet, row, column } = formula;
    eachPlace(area ?? { top: row, left: column, bottom: row, right: column }, (r, c) => {
      if (isTrouble(value(r, c))) cells.push({ sheet, row: r, column: c });
    });
    if (cells.length > 0) this.found.set(keyOf(formula), cells);
    else this.found.delete(keyOf(formula));
  }

  /** Of every sheet in trouble its cells, row by row. */
  bySheet(): ReadonlyMap<number, readonly CellPlace[]> {
    const sheets = new Map<number, CellPlace[]>();
    for (const cell of [...this.found.values()].flat()) {
      const cells = sheets.get(cell.sheet);
      if (cells) cells.push(cell);
      else sheets.set(cell.sheet, [cell]);
    }
    for (const cells of sheets.values()) cells.sort((a, b) => a.row - b.row || a.column - b.column);
    return sheets;
  }
}

const keyOf = ({ sheet, row, column }: CellPlace): string => `${sheet} ${row} ${column}`;

/** The cell to go to from where a person is: the next one behind, else the first. */
export function nextOf<T extends { readonly row: number; readonly column: number }>(
  cells: readonly T[],
  from: { readonly row: number; readonly column: number } | undefined,
): T | undefined {
  const behind =
    from && cells.find(({ row, column }) => row > from.row || (row === from.row && column > from.column));
  return behind ?? cells[0];
}
