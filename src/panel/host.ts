import type { WorksheetFunction } from '../call/worksheetFunction';
import type { Range, WorkbookCells } from '../workbook/cells';
import type { CellRef } from '../whatif/plan';
import type { KeptWhatIf } from '../whatif/kept';
import type { Outcome, RunOptions, TrialCells } from '../whatif/run';
import type { Variants } from '../whatif/variants/read';

export type { CellInput, CellView, Range } from '../workbook/cells';

/** A copy of the workbook to try values in. Dispose of it when done. */
export interface WorkbookTrial extends TrialCells {
  dispose(): void;
}

export interface Separator {
  readonly sign: string;
  /** Only guessed, from how numbers are written here. */
  readonly isGuess: boolean;
}

export interface Place {
  readonly row: number;
  readonly column: number;
}

/** Whether a form takes its inputs from cells that the workbook has already, or brings its own. */
export type FormInputs = 'shared' | 'own';

/** What became of a form; where it was not written, what is to be decided first. */
export interface FormOutcome {
  readonly says: string;
  /** Where it would fit. */
  readonly instead?: Place & { readonly called: string };
  /** There are inputs that it could share; where it is to stand. */
  readonly couldShare?: Place;
}

/** What a cell's formula reads and what reads it, as the host's calculation knows it. */
export interface CellTrace {
  readonly reads: readonly Range[];
  /** It may read more than its text names. */
  readonly readsMore: boolean;
  readonly readers: readonly Range[];
  /** From the cell that it reads to the one where its error began. */
  readonly error: readonly Range[];
}

/** What-ifs that stay in the workbook. */
export interface KeptHost {
  list(): Promise<readonly KeptState[]>;
  /** Writes an outcome into the workbook; gives the name of its sheet. */
  keep(outcome: Outcome): Promise<string>;
  /** Runs one again and writes what it finds; undefined where it was stopped. */
  again(kept: KeptWhatIf, options: RunOptions): Promise<Outcome | undefined>;
}

export interface KeptState {
  readonly kept: KeptWhatIf;
  /** It was made for other values. */
  readonly isOld: boolean;
}

/** Named sets of inputs, side by side on a sheet of the workbook. Each change is one act. */
export interface VariantsHost {
  /** Undefined where the workbook has none. */
  read(): Promise<Variants | undefined>;
  begin(inputs: readonly CellRef[], results: readonly CellRef[]): Promise<void>;
  /** Keeps the present values of the inputs under a name. */
  add(name: string): Promise<void>;
  /** Puts the values of a variant into the design; gives what is to be said of taking it back. */
  apply(name: string): Promise<string>;
  /** Works the results of all variants out again. */
  again(): Promise<void>;
}

/** The workbook that the panel stands beside, as much of it as the panel needs. */
export interface Host extends WorkbookCells {
  /** Where the workbook lies, to tell it from others; needed where values may be tried in the workbook itself. */
  readonly address?: string;
  /** The selected cells, the active one first in mind: `row` and `column` are its place when one cell is chosen. */
  readSelection(): Promise<Range | undefined>;
  /** Calls back when another cell is selected, and when what the selected cell shows has changed. */
  onSelectionChange(listener: () => void): () => void;
  /** Starts editing the selected cell with this text, the cursor at its end. */
  insertFormula(text: string): Promise<void>;
  /**
   * A copy that calculates what lies between the inputs and the results as the workbook does. Where there is none,
   * values are tried in the workbook itself, and put back.
   */
  copy?(inputs: readonly CellRef[], results: readonly CellRef[]): Promise<WorkbookTrial | undefined>;
  /** Lets cells be filled from a list of words. */
  offerWords?(range: Range, words: readonly string[]): Promise<void>;
  /** Makes cells of text, so that nothing typed there becomes a date. */
  formatAsText?(range: Range): Promise<void>;
  /** Writes a function as a form at the selected cell, or at another place of its sheet. */
  writeForm?(fn: WorksheetFunction, at?: Place, inputs?: FormInputs): Promise<FormOutcome>;
  /** What people type between arguments, where it may be another sign than the comma. */
  readSeparator?(): Promise<Separator>;
  /** What the program's own tools for it make of our functions, where that is to be known before a what-if. */
  readonly ownWhatIf?: string;
  /** Which cells depend on which, where the host knows it. */
  trace?(cell: Range): Promise<CellTrace | undefined>;
  /** The cells whose formula is such a one, sheet by sheet, where the host has all formulas at hand. */
  formulasWhere?(isSuch: (formula: string) => boolean): readonly Range[];
  /** Brings cells to the front. */
  select?(range: Range): void;
  readonly kept: KeptHost;
  readonly variants: VariantsHost;
}
