import type { Kind } from '../src/core/quantity';
import type { CellDescription, ConditionDescription, StyleDescription } from '../src/package/description';

/** What the parts of a design sheet write it with. */
export interface Pen {
  readonly conditions: ConditionDescription[];
  /** The cell of a row's value, as the sheet itself or another one names it. */
  place(key: string, from?: string): string | undefined;
  unitCell(key: string, from: string): string;
  style(description: StyleDescription): string;
  named({ label, note }: { readonly label: string; readonly note: string }, row: number): void;
  blanks(row: number): void;
  /** The formula of the row's value, or of another cell, or a text that stands for it. */
  formulaText(row: number, text?: string, of?: string): void;
  unitOf(kind: Kind): CellDescription;
  choose(cells: string, choices: readonly string[], title: string): void;
  grow(row: number, lines: number, each: number): void;
  put(address: string, cell: CellDescription): void;
}
