/** What a shared copy carries to be turned back. */
import { CellError, type CellValue } from '../cells/value';
import type { Cell } from '../package/model';
import { checksum } from './checksum';

export interface OriginalCell {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  /** What stood there when the copy was made, as `contentText` tells it. */
  readonly is: string;
  /** The formula with our functions, for a rewritten cell. */
  readonly was?: string;
  /** The cells that it filled. */
  readonly spill?: string;
  /** The color before sharing gave another one; empty for none. */
  readonly fill?: string;
  /** What sharing wrote into the cell's note. */
  readonly note?: string;
}

/** A formula in a name, in a rule for entries or in a conditional format. */
export interface OriginalOutside {
  readonly what: string;
  /** Of a name. */
  readonly name: string;
  /** The sheet of a rule with its first cell; of a name, the sheet that alone knows it, or empty. */
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
  readonly is: string;
  readonly was: string;
}

export interface Original {
  readonly basis: string;
  /** Sheets that sharing added. */
  readonly added: readonly string[];
  /** All cells that held anything. */
  readonly cells: readonly OriginalCell[];
  readonly outside: readonly OriginalOutside[];
}

/** Longer texts are told by their checksum. */
const LONGEST = 1000;

/** A cell's content as text that can be compared after another program has saved it: a value as JSON, a formula with `=`. */
export function contentText(cell: Pick<Cell, 'formula' | 'value'> | undefined): string {
  if (cell?.formula !== undefined) return `=${cell.formula}`;
  const value: CellValue = cell?.value ?? null;
  const text = JSON.stringify(value instanceof CellError ? value.code : value);
  return text.length > LONGEST ? `"${checksum(text)} of ${text.length} letters"` : text;
}
