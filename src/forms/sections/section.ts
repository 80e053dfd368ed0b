import type { Amount } from '../../core/define';
import type { Kind } from '../../core/quantity';
import type { Judged } from '../scale';

/**
 * What a section of a design sheet is made of. Keys are names of cells as functions name their arguments, `seatRadius`,
 * on the sheet `seat_radius`; formulas are written with the names of the sheet. An input with the same key in two
 * sections is one input.
 */
export interface Section {
  /** For the command line: `seat`. */
  readonly id: string;
  readonly title: string;
  /** What it is there to decide. */
  readonly decide: string;
  /** Where hands get hurt: read before anything else. */
  readonly danger?: string;
  /** In the order of the job. */
  readonly inputs: Readonly<Record<string, SectionInput>>;
  readonly parts: readonly Part[];
}

export interface SectionInput {
  /** A design that holds, invented. */
  readonly first: Amount;
  readonly label?: string;
  readonly note?: string;
  /** The argument that says what it takes, where no function of the section takes it as it is. */
  readonly like?: readonly [fn: string, argument: string];
}

export type Part = Use | Worked | Verdict | Table | Shots;

/** A function; an argument that has the name of a key takes it, an optional one only where that is said. */
export interface Use {
  readonly type: 'use';
  readonly fn: string;
  readonly key: string;
  readonly label: string;
  readonly note: string;
  /** Arguments called otherwise than the key, and words that stand for themselves in quotes: `"dia"`. */
  readonly with: Readonly<Record<string, string>>;
}

/** Plain arithmetic between other rows. */
export interface Worked {
  readonly type: 'worked';
  readonly key: string;
  readonly label: string;
  readonly note: string;
  readonly formula: string;
  readonly kind: Kind;
}

export interface Verdict {
  readonly type: 'verdict';
  readonly label: string;
  /** What to do where it does not hold. */
  readonly note: string;
  readonly judged: Judged;
}

/** Things of a kind, one a row. */
export interface Table {
  readonly type: 'table';
  readonly title: string;
  readonly heads: readonly [string, string];
  /** Typed: what it is, and two more. Lengths are texts with their unit. */
  readonly rows: readonly (readonly [string, string, number])[];
  /** Formulas of a row, in which `{1}` and `{2}` are what was typed, `{3}` what the first gives. */
  readonly gives: readonly [TableColumn, TableColumn];
}

export interface TableColumn {
  readonly head: string;
  readonly formula: string;
  readonly kind: Kind | 'text';
}

/** Trial shots: what was set, what was measured, and the number of the design that they fit best. */
export interface Shots {
  readonly type: 'shots';
  /** The key whose value in the design the fitted one takes the place of. */
  readonly fits: string;
  /** What that is. */
  readonly label: string;
  readonly title: string;
  /** What predicts the measured result, by which argument it is fitted, and which was set anew from shot to shot. */
  readonly fn: string;
  readonly argument: string;
  readonly varied: string;
  /** Heads of what was set and what was measured. */
  readonly set: string;
  readonly measured: string;
  /** The other arguments, as in `Use`: the same in all shots. */
  readonly with: Readonly<Record<string, string>>;
  /** Between which values the fitted one is looked for. */
  readonly look: readonly [Amount, Amount];
  /** Typed: which, what was set, what was measured, the other settings. */
  readonly shots: readonly (readonly [string, Amount, Amount, string])[];
}

export const calls = (
  fn: string,
  key: string,
  label: string,
  note: string,
  bound: Readonly<Record<string, string>> = {},
): Use => ({ type: 'use', fn, key, label, note, with: bound });

export const worked = (key: string, label: string, note: string, formula: string, kind: Kind): Worked => ({
  type: 'worked',
  key,
  label,
  note,
  formula,
  kind,
});

/** How often over something is there; what is needed counts as 1. */
export const spare = (label: string, margin: string, note: string): Verdict => ({
  type: 'verdict',
  label,
  note,
  judged: { margin },
});

export const holds = (label: string, when: string, note: string): Verdict => ({
  type: 'verdict',
  label,
  note,
  judged: { when },
});
