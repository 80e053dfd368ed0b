import type { ErrorCode, Matrix } from '../../cells/value';
import { CellError } from '../../cells/value';

/** Where a formula stands, in the engine's own terms: rows and columns count from 0. */
export interface FormulaCell {
  readonly unitId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

interface Refusal {
  readonly code: ErrorCode;
  readonly message: string;
  /** Position in the result that was refused. */
  readonly row: number;
  readonly column: number;
}

/** Enough for any spill that a person would read; keeps a formula over a whole column from filling the memory. */
const KEPT = 1000;

/**
 * Why cells are in error. The grid keeps only an error's code, so what the functions said is kept here, by the
 * formula's cell, until that formula is calculated again.
 */
export class Refusals {
  private run = 0;
  private readonly cells = new Map<string, { run: number; said: Map<string, Refusal> }>();

  /** A calculation starts: what a formula says from now on replaces what it said before. */
  begin(): void {
    this.run += 1;
  }

  /** Notes what the functions of a formula answered. */
  note(cell: FormulaCell, answer: Matrix): void {
    const key = keyOf(cell);
    const known = this.cells.get(key);
    if (known && known.run !== this.run) this.cells.delete(key);
    answer.forEach((line, row) => {
      line.forEach((value, column) => {
        if (!(value instanceof CellError) || !value.message) return;
        this.add(key, { code: value.code, message: value.message, row, column });
      });
    });
  }

  /** Why this cell of the formula's result is in error; empty where no function said so. */
  why(cell: FormulaCell, error: CellError, row = 0, column = 0): string {
    const said = [...(this.cells.get(keyOf(cell))?.said.values() ?? [])].filter(
      (one) => one.code === error.code,
    );
    return (said.find((one) => one.row === row && one.column === column) ?? said[0])?.message ?? '';
  }

  private add(key: string, refusal: Refusal): void {
    let entry = this.cells.get(key);
    if (!entry) this.cells.set(key, (entry = { run: this.run, said: new Map() }));
    if (entry.said.size >= KEPT) return;
    const { row, column, code, message } = refusal;
    entry.said.set(`${row} ${column} ${code} ${message}`, refusal);
  }
}

function keyOf({ unitId, sheetId, row, column }: FormulaCell): string {
  return `${unitId}\n${sheetId}\n${row}\n${column}`;
}
