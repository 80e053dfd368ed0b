/** Rows above the lines: the title, and of every block its head. */
export const FIRST_ROW = 5;
export const HEAD_ROWS = 2;
/** The first column of values, from 0. */
export const VALUES = 3;

/** One line of the working. */
export interface WorkingLine {
  readonly role: 'unit' | 'input' | 'question' | 'check' | 'step' | 'result';
  readonly says: string;
  readonly symbol: string;
  readonly equation: string;
  /** One formula a column. */
  readonly texts: readonly string[];
  /** Worksheet text of the unit's symbol. */
  readonly unit: string;
  /** Places, among the lines, of the questions of which one must hold for the line to count. */
  readonly only: readonly number[];
}

/** What lines that are placed together belong to: a call, results that a formula reads as a range, questions. */
export interface WorkingHead {
  readonly sheet: string;
  /** The cell that it belongs to. */
  readonly cell: string;
  /** What its sheet calls that cell. */
  readonly label?: string;
  readonly what: string;
  readonly says: string;
  /** What calls of one formula in several cells have in common: they stand side by side. */
  readonly group?: string;
}

export interface Working extends WorkingHead {
  readonly lines: readonly WorkingLine[];
}

/** Workings with the same lines, one a column; of a range of results all columns of one. */
export interface Block {
  /** Of its head, from 1. */
  readonly row: number;
  readonly columns: readonly Working[];
}
