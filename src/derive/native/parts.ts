import type { Guard } from './guard';

/** What a part of the working is, for a person who reads it row by row. */
export interface PartWords {
  readonly role: 'unit' | 'input' | 'step';
  readonly says: string;
  /** Where it comes from: a cell and its unit, or the equation in symbols. */
  readonly equation: string;
  /** In which its number stands. */
  readonly unit: string;
  /** The place of its argument. */
  readonly input?: number;
}

/** A named part of the working: an argument in SI, or a step. Its text may hold the marks of earlier parts. */
export interface NativePart {
  readonly name: string;
  readonly symbol: string;
  readonly text: string;
  readonly words: PartWords;
}

/** Makes a part of a text, or finds the one that there is; gives its mark. */
export type PartMaker = (symbol: string, text: string, words: PartWords) => string;

/** A condition that ends the calculation: with a refusal, or with an answer in words. */
export interface NativeGate {
  readonly when: string;
  readonly says: string;
  readonly refuses: boolean;
}

/** One result in the units of the call. */
export interface NativeResult {
  readonly text: string;
  readonly says: string;
  /** Worksheet text of the unit's symbol. */
  readonly unit: string;
}

/** The working of a call whose words are settled, cut at its questions, its steps and its results. */
export interface NativeForm {
  readonly guards: readonly Guard[];
  /** Asked in this order, once nothing is refused by a guard. */
  readonly gates: readonly NativeGate[];
  readonly results: readonly NativeResult[];
}

/** When a form is the one that counts. */
export interface Condition {
  readonly when: string;
  readonly says: string;
}

export interface NativeVariant {
  /** All must hold; none where there is one form only. */
  readonly when: readonly Condition[];
  /** Why there is none, where it is refused. */
  readonly form: NativeForm | string;
}

/** A call in a worksheet's own functions. Of its variants the first whose conditions hold counts. */
export interface NativeCall {
  readonly parts: readonly NativePart[];
  readonly variants: readonly NativeVariant[];
  readonly looksUp: boolean;
  /** An argument stays what it was when the call was written: another is refused, though the function may take it. */
  readonly settles: boolean;
  /** Sentences on what was settled when the call was written. */
  readonly notes: readonly string[];
}

export const NO_CHOICE = 'a word that is no choice here';
