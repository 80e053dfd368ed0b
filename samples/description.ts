/** What a design sheet says, readable by a toolmaker; `sheet.ts` lays it out. */
import { findDefinition } from '../src/call/findDefinition';
import type { Definition, Gives } from '../src/core/define';
import type { Kind } from '../src/core/quantity';
import { FAILS, HOLDS, LITTLE, UNKNOWN, type Judged } from '../src/forms/scale';
import { columnLetters, parseCell } from '../src/cells/address';

export interface Entry {
  readonly type: 'entry';
  readonly key: string;
  readonly label: string;
  readonly value: number | string;
  /** Empty for plain numbers and words. */
  readonly unit: string;
  readonly note: string;
  readonly choices?: readonly string[];
  readonly format?: string;
}

export interface Line {
  readonly key: string;
  readonly label: string;
  readonly note: string;
}

export interface Result {
  readonly type: 'result';
  /** More than one where the formula spills down. */
  readonly lines: readonly [Line, ...Line[]];
  readonly formula: string;
  /** What it gives; told by the function where the formula is one call of ours. */
  readonly kind: Kind | 'text';
  readonly format?: string;
}

/** A judgement on the scale that all design sheets share. */
export interface Verdict {
  readonly type: 'verdict';
  readonly label: string;
  readonly judged: Judged;
  readonly note: string;
}

/** One of two answers that are as good as each other. */
export interface Either {
  readonly type: 'either';
  readonly label: string;
  readonly when: string;
  readonly yes: string;
  readonly no: string;
  readonly note: string;
}

/** A verdict whose words stand where other rows have a note, because they are long. */
export interface Says {
  readonly type: 'says';
  readonly label: string;
  /** Gives the words. */
  readonly formula: string;
  /** Gives one of the scale; names rows, and `words`. */
  readonly verdict: string;
}

export type Row = Entry | Result | Verdict | Either | Says;

export interface Section {
  readonly title: string;
  /** What this section is there to decide. */
  readonly decide: string;
  readonly rows: readonly Row[];
  /** Stands under the rows. */
  readonly list?: List;
}

/**
 * Things of a kind, one a row. A column is one formula that spills down; formulas name columns and rows by their keys.
 * Lengths are typed in the unit of their row (`typed` column of the key `unit`) and converted by one formula at the
 * end of the list, to which the other formulas refer.
 */
export interface List {
  readonly columns: readonly ListColumn[];
}

export interface TypedColumn {
  readonly type: 'typed';
  readonly key: string;
  readonly head: string;
  readonly values: readonly (number | string)[];
  readonly note: string;
  readonly choices?: readonly string[];
  /** In the unit of its row. */
  readonly length?: true;
}

export interface GivenColumn {
  readonly type: 'given';
  readonly key: string;
  readonly head: string;
  readonly formula: string;
  readonly kind: Kind | 'text';
  readonly format?: string;
  readonly note: string;
}

export type ListColumn = TypedColumn | GivenColumn;

/** A table that one formula spills: values down against values across. */
export interface WhatIf {
  readonly title: string;
  /** Row whose unit the answers have; a ratio where left out. */
  readonly unitOf?: string;
  readonly says: string;
  readonly down: Heads;
  readonly across: Heads;
  /** Names rows of the sheet, and `down` and `across`. */
  readonly formula: string;
  readonly format: string;
  /** Marks answers for which this holds; names rows of the sheet, and `answer`. */
  readonly mark?: { readonly when: string; readonly says: string };
}

export interface Heads {
  readonly label: string;
  /** Numbers to type over, or formulas that name rows of the sheet. */
  readonly values: readonly (number | string)[];
  readonly unitOf?: string;
  readonly format: string;
}

export interface Design {
  readonly file: string;
  readonly title: string;
  readonly scenario: string;
  /** The one caution to read before anything else. */
  readonly danger: string;
  readonly sheet: string;
  readonly sections: readonly Section[];
  readonly cautions: readonly string[];
  readonly whatIf: readonly WhatIf[];
  /** Where the columns of a list ask for others than a plain sheet has. */
  readonly layout?: Layout;
}

export interface Layout {
  /** Characters, by letter from A on. */
  readonly widths: Readonly<Record<string, number>>;
  /** First and last column of notes and of formulas. */
  readonly note: readonly [string, string];
  readonly formula: readonly [string, string];
}

export function entry(
  key: string,
  label: string,
  value: number | string,
  unit: string,
  note: string,
  options: Pick<Entry, 'choices' | 'format'> = {},
): Entry {
  return { type: 'entry', key, label, value, unit, note, ...options };
}

interface ResultOptions {
  readonly kind?: Kind | 'text';
  readonly format?: string;
}

export function result(
  key: string,
  label: string,
  formula: string,
  note: string,
  options: ResultOptions = {},
): Result {
  return results([{ key, label, note }], formula, options);
}

export function results(
  lines: readonly [Line, ...Line[]],
  formula: string,
  { kind = kindOf(formula), ...options }: ResultOptions = {},
): Result {
  return { type: 'result', lines, formula, kind, ...options };
}

/** Whether something is so. */
export const holds = (label: string, when: string, note: string): Verdict => ({
  type: 'verdict',
  label,
  judged: { when },
  note,
});

/** How often over something is there: what is available over what is needed. */
export const spare = (label: string, margin: string, note: string): Verdict => ({
  type: 'verdict',
  label,
  judged: { margin },
  note,
});

export const either = (label: string, when: string, yes: string, no: string, note: string): Either => ({
  type: 'either',
  label,
  when,
  yes,
  no,
  note,
});

/** The margin of a function against yield, and what it comes to. */
export function strength(
  key: string,
  label: string,
  call: string,
  note: string,
  ifNot: string,
): readonly [Result, Verdict] {
  return [
    result(key, `${label}: yield over stress`, call, note, { kind: 'ratio' }),
    spare(`${label}: strength`, key, ifNot),
  ];
}

function givesOf(definition: Definition): Gives | undefined {
  switch (definition.type) {
    case 'formula':
      return definition.steps[definition.result]?.gives;
    case 'procedure':
      return definition.gives;
    case 'lookup': {
      const kinds = new Set(Object.values(definition.columns).map(({ gives }) => gives));
      return kinds.size === 1 ? [...kinds][0] : undefined;
    }
  }
}

export function says(label: string, formula: string, verdict: string): Says {
  return { type: 'says', label, formula, verdict };
}

/** What a function says of its own range and strength. */
export function check(label: string, formula: string): Says {
  return says(
    label,
    formula,
    `IF(words="in range", "${HOLDS}", IF(ISNUMBER(SEARCH("does not hold", words)), "${FAILS}", IF(ISNUMBER(SEARCH("little to spare", words)), "${LITTLE}", "${UNKNOWN}")))`,
  );
}

export function typed(
  key: string,
  head: string,
  values: readonly (number | string)[],
  note: string,
  options: Pick<TypedColumn, 'choices' | 'length'> = {},
): TypedColumn {
  return { type: 'typed', key, head, values, note, ...options };
}

export function given(
  key: string,
  head: string,
  formula: string,
  note: string,
  { kind = kindOf(formula), ...options }: ResultOptions = {},
): GivenColumn {
  return { type: 'given', key, head, formula, kind, note, ...options };
}

/** What a formula gives that is one call of ours. */
function kindOf(formula: string): Kind | 'text' {
  const name = /^MOLD\.([A-Z.]+)\(/.exec(formula)?.[1];
  const definition = name === undefined ? undefined : findDefinition(name);
  const gives = definition && givesOf(definition);
  if (typeof gives !== 'string') throw new Error(`Say what this gives: ${formula}`);
  return gives;
}

/** One width for a run of columns. */
export function even(first: string, last: string, width: number): Record<string, number> {
  const [from, to] = [columnIndex(first), columnIndex(last)];
  return Object.fromEntries(
    Array.from({ length: to - from + 1 }, (_, i) => [columnLetters(from + i), width]),
  );
}

const columnIndex = (letters: string): number => parseCell(`${letters}1`)?.column ?? 0;
