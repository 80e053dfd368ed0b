import type { Kind, System } from './quantity';

/**
 * How definitions are written: types and constructors, nothing that computes.
 * A definition is the only place where a function's name, units, defaults, equation and sources stand; what it is
 * tested by stands beside it (`checks.ts`).
 */

/**
 * Where a fact comes from, and how it was come by. Published: the text itself was read, so its title and edition are
 * given. Second hand: a page, a listing or another program's data file that quotes a standard or a book was read.
 */
export interface Source {
  readonly kind: 'published' | 'secondhand' | 'derived' | 'memory' | 'practice';
  readonly cites: string;
}

export const published = (cites: string): Source => ({ kind: 'published', cites });
export const secondHand = (cites: string): Source => ({ kind: 'secondhand', cites });
export const derived = (cites: string): Source => ({ kind: 'derived', cites });
export const fromMemory = (cites: string): Source => ({ kind: 'memory', cites });
export const commonPractice = (cites: string): Source => ({ kind: 'practice', cites });

/** A limit, default or check value: a plain number for a ratio or a count, else text with its unit (`'0.002 in'`). */
export type Amount = number | string;

export interface Limits {
  readonly min?: Amount;
  readonly above?: Amount;
  readonly max?: Amount;
  readonly below?: Amount;
}

/** A symbol of the equations that a named input (a metal, a thread) provides. */
export interface Binding<T> {
  readonly gives: Kind;
  readonly says: string;
  readonly from: (row: T) => number;
}

/** Why a function answers otherwise from a basis on: what its cells of older sheets are told by. */
export interface Change {
  readonly basis: number;
  readonly says: string;
}

/** How one entry of a set is read. */
interface EntryReading<V> {
  readonly what: string;
  readonly read: (text: string, system: System, cell: 'text' | 'number') => V;
  readonly number: { readonly kind: Kind; readonly says: string; readonly means: (si: number) => V } & Limits;
}

/** How an argument is read from a cell. */
export type Reading<V = unknown> =
  | ({
      readonly as: 'quantity';
      readonly kind: Kind;
      readonly usual?: readonly [Amount, Amount];
      readonly noUsual?: string;
    } & Limits)
  | { readonly as: 'choice'; readonly words: readonly string[] }
  | {
      readonly as: 'named';
      /** What it names, for messages: `a thread`. */
      readonly what: string;
      /** Throws a `Refusal`, or an error of the tables, for text that names nothing. */
      readonly read: (text: string, system: System, cell: 'text' | 'number') => V;
      /** What a plain number, or a quantity with a unit, stands for; absent where only names are taken. */
      readonly number?: {
        readonly kind: Kind;
        readonly says: string;
        readonly means: (si: number) => V;
      } & Limits;
      readonly binds?: Readonly<Record<string, Binding<V>>>;
      /** Every name that its table holds: what copies carry. */
      readonly names?: () => readonly string[];
      /** What to watch for with what is named: cautions of every function that uses it. */
      readonly notes?: (value: V) => readonly string[];
      /** Why a name may stand for something else than in an earlier basis. */
      readonly changes?: readonly Change[];
    }
  | ({ readonly as: 'list'; readonly kind: Kind } & Limits)
  | ({ readonly as: 'set' } & EntryReading<unknown>)
  | { readonly as: 'text' };

/** A range is one list or set; it does not broadcast. */
export const takesRange = ({ as }: Reading): boolean => as === 'list' || as === 'set';

/** One entry of a set: what it names, and what stands in its cell. */
export interface Entry<V> {
  readonly means: V;
  readonly written: string | number;
}

export interface Input<N extends string = string, V = unknown> {
  readonly name: N;
  /** The book's symbol; steps name the input by it. */
  readonly symbol: string;
  readonly says: string;
  readonly reading: Reading<NonNullable<V>>;
  /** May be left out. Without a default the equations ask `given(symbol)`. */
  readonly optional: boolean;
  /** What it is when left out. */
  readonly default?: Amount;
  /** The name of another input whose value it takes when left out. */
  readonly sameAs?: string;
  /** What counts when it is left out, in words, where that is no plain value: `no stop`. */
  readonly whenLeftOut?: string;
}

// Any definition's inputs, whatever their values.
// eslint-disable-next-line @typescript-eslint/no-explicit-any
export type AnyInput = Input<string, any>;

/** The values of inputs by name, as a procedure's body receives them: quantities in SI. */
export type Values<I extends readonly AnyInput[]> = {
  readonly [K in I[number] as K['name']]: K extends Input<string, infer V> ? V : never;
};

export type NameOf<I extends readonly AnyInput[]> = I[number]['name'];

interface QuantityOptions extends Limits {
  readonly says: string;
  readonly default?: Amount;
  readonly sameAs?: string;
  readonly optional?: true;
  readonly whenLeftOut?: string;
  /** The range in which such a value usually lies in this trade; outside it a checker asks whether the unit is meant. */
  readonly usual?: readonly [Amount, Amount];
  /** Why no range is usual; one of the two stands with every quantity. */
  readonly noUsual?: string;
}
type QuantityValue<O> = O extends { readonly optional: true } ? number | undefined : number;

/** A quantity, a ratio or a count. `input('push', 'F', 'force', { min: '0 N', says: '…' })`. */
export function input<const N extends string, const O extends QuantityOptions>(
  name: N,
  symbol: string,
  kind: Kind,
  options: O,
): Input<N, QuantityValue<O>> {
  const { says, default: standard, sameAs, optional, whenLeftOut, ...rest } = options;
  return {
    name,
    symbol,
    says,
    reading: { as: 'quantity', kind, ...rest } as Reading<NonNullable<QuantityValue<O>>>,
    optional: optional === true || standard !== undefined || sameAs !== undefined,
    ...(standard === undefined ? {} : { default: standard }),
    ...(sameAs === undefined ? {} : { sameAs }),
    ...(whenLeftOut === undefined ? {} : { whenLeftOut }),
  };
}

/** One of a few words. Steps may differ by it: `{ by: 'method', cases: { worst: …, rss: … } }`. */
export function choice<const N extends string, const W extends readonly string[]>(
  name: N,
  words: W,
  options: { readonly says: string; readonly default?: W[number] },
): Input<N, W[number]>;
export function choice<const N extends string, const W extends readonly string[]>(
  name: N,
  words: W,
  options: { readonly says: string; readonly optional: true },
): Input<N, W[number] | undefined>;
export function choice<const N extends string, const W extends readonly string[]>(
  name: N,
  words: W,
  options: { readonly says: string; readonly default?: W[number]; readonly optional?: true },
): Input<N, W[number] | undefined> {
  return {
    name,
    symbol: name,
    says: options.says,
    reading: { as: 'choice', words },
    optional: options.optional === true || options.default !== undefined,
    ...(options.default === undefined ? {} : { default: options.default }),
  };
}

type NamedReading<V> = Extract<Reading<V>, { as: 'named' }>;

/** A name that a table resolves: a metal, a thread, a drill. */
export function named<const N extends string, V>(
  name: N,
  symbol: string,
  reading: Omit<NamedReading<V>, 'as'>,
  options: { readonly says: string; readonly default?: Amount },
): Input<N, V>;
export function named<const N extends string, V>(
  name: N,
  symbol: string,
  reading: Omit<NamedReading<V>, 'as'>,
  options: { readonly says: string; readonly optional: true; readonly whenLeftOut?: string },
): Input<N, V | undefined>;
export function named<const N extends string, V>(
  name: N,
  symbol: string,
  reading: Omit<NamedReading<V>, 'as'>,
  options: {
    readonly says: string;
    readonly default?: Amount;
    readonly optional?: true;
    readonly whenLeftOut?: string;
  },
): Input<N, V | undefined> {
  const { says, default: standard, optional, whenLeftOut } = options;
  return {
    name,
    symbol,
    says,
    reading: { as: 'named', ...reading },
    optional: optional === true || standard !== undefined,
    ...(standard === undefined ? {} : { default: standard }),
    ...(whenLeftOut === undefined ? {} : { whenLeftOut }),
  } as Input<N, V | undefined>;
}

/** A range read as one list of quantities; it does not broadcast. */
export function list<
  const N extends string,
  const O extends {
    readonly says: string;
    readonly optional?: true;
    readonly whenLeftOut?: string;
  } & Limits,
>(
  name: N,
  symbol: string,
  kind: Kind,
  options: O,
): Input<N, O extends { readonly optional: true } ? readonly number[] | undefined : readonly number[]> {
  const { says, optional, whenLeftOut, ...limits } = options;
  const reading = { as: 'list', kind, ...limits } as Reading;
  return {
    name,
    symbol,
    says,
    reading,
    optional: optional === true,
    ...(whenLeftOut === undefined ? {} : { whenLeftOut }),
  } as ReturnType<typeof list<N, O>>;
}

/** What a result is: a quantity, a text, one or the other by a choice, or a row of several. */
export type Gives =
  | Kind
  | 'text'
  | {
      readonly by: string;
      /** The word of the input's value, where it is no word itself. */
      readonly word?: (value: never) => string;
      readonly kinds: Readonly<Record<string, Kind | 'text'>>;
    }
  | { readonly row: readonly { readonly gives: Kind; readonly says: string }[] };

/** A range of names or numbers, read as one set; blank cells in it are no entries. */
export const set = <const N extends string, V>(
  name: N,
  reading: EntryReading<V>,
  options: { readonly says: string },
): Input<N, readonly Entry<V>[]> => ({
  name,
  symbol: name,
  says: options.says,
  reading: { as: 'set', ...reading },
  optional: false,
});

interface Common<I extends readonly AnyInput[]> {
  /** Its id: `SEAT.SINK`. Stored in workbooks, so never changed. */
  readonly name: string;
  /** Names that go on answering, for the sheets that hold them; never listed. */
  readonly aliases?: readonly string[];
  readonly summary: string;
  readonly inputs: I;
  readonly sources: readonly [Source, ...Source[]];
  /** Longer explanation for the help page, one paragraph an entry. */
  readonly notes?: readonly string[];
  /** Names of functions that a person may want next. */
  readonly related?: readonly string[];
  /** Changes of its results, beside those of what it reads by name; each also stands in the changelog. */
  readonly changes?: readonly Change[];
}

/** A step that is a stress, and the input that is the metal which bears it: from both the margin against yield is told. */
export interface Bearing<N extends string = string, S extends string = string> {
  readonly stress: S;
  readonly of: N;
}

/** The metal named first is the one that is asked about; of the others the least margin counts where they are known. */
export type Strength<N extends string = string, S extends string = string> = readonly [
  Bearing<N, S>,
  ...Bearing<N, S>[],
];

/** Some inputs together make no sense; the message may hold inputs in braces: `must be larger than {seatRadius}`. */
export interface RefuseWhen<N extends string = string> {
  readonly when: string;
  readonly argument: N;
  readonly says: string;
}

/** One line of working. `cases` chooses the equation by a choice input. */
export type Step = {
  readonly gives: Kind;
  readonly says: string;
  /**
   * A rule of thumb with hidden units: the equation's numbers are in these units, by symbol, and its value in
   * `out`. Dimensions are not checked inside it.
   */
  readonly fitted?: { readonly units: Readonly<Record<string, string>>; readonly out: string };
} & ({ readonly expr: string } | { readonly by: string; readonly cases: Readonly<Record<string, string>> });

/** A number of nature, of a standard or of a rule, that equations name by its symbol. */
export interface Constant {
  readonly gives: Kind;
  readonly is: Amount;
  readonly says: string;
}

/** `p_n: constant('pressure', '1 atm', 'Standard atmosphere')`. */
export const constant = (gives: Kind, is: Amount, says: string): Constant => ({ gives, is, says });

export interface Formula<
  I extends readonly AnyInput[] = readonly AnyInput[],
  S extends string = string,
> extends Common<I> {
  readonly type: 'formula';
  /** Numbers that equations and conditions name instead of writing them out. */
  readonly constants?: Readonly<Record<string, Constant>>;
  readonly steps: Readonly<Record<S, Step>>;
  readonly result: NoInfer<S>;
  /** Answers in words instead of the result where the condition on the symbols holds. */
  readonly inWords?: { readonly when: string; readonly says: string };
  readonly refuse?: readonly RefuseWhen<NameOf<I>>[];
  readonly strength?: Strength<NameOf<I>, NoInfer<S>>;
  /** The range of validity: what must hold, and the sentence for a person where it does not. */
  readonly valid?: readonly { readonly holds: string; readonly says: string }[];
  readonly cautions?: readonly { readonly when?: string; readonly says: string }[];
}

export function formula<const I extends readonly AnyInput[], const S extends string>(
  definition: Omit<Formula<I, S>, 'type'>,
): Formula<I, S> {
  return { type: 'formula', ...definition };
}

/** One column of a table that a lookup can give. */
export interface Column<T> {
  readonly gives: Kind | 'text';
  readonly says: string;
  /** SI value or text; undefined where the table has none. */
  readonly from: (row: T) => number | string | undefined;
  /** Why a row has no value here, and what to ask for instead. */
  readonly missing?: (row: T) => string;
  /** Source of the column, where it is not the definition's; by row where rows differ. */
  readonly source?: Source | ((row: T) => Source);
}

export interface Lookup<
  T = unknown,
  C extends string = string,
  I extends readonly AnyInput[] = readonly AnyInput[],
> extends Common<I> {
  readonly type: 'lookup';
  /** First the input that names the row, then, where there is more than one column, the one that chooses it. */
  readonly columns: Readonly<Record<C, Column<T>>>;
  /** Every row with the name that finds it. */
  readonly rows: () => readonly (readonly [string, T])[];
  readonly cautions?: readonly { readonly says: string }[];
}

/** A value from a table: `inputs` is the row's input, and for several columns a choice among them. */
export function lookup<
  T,
  const C extends string,
  const I extends readonly [Input<string, T>, Input<string, C>?],
>(
  definition: Omit<Lookup<T, C, I & readonly AnyInput[]>, 'type' | 'inputs'> & { readonly inputs: I },
): Lookup<T, C, I & readonly AnyInput[]> {
  return { type: 'lookup', ...definition } as Lookup<T, C, I & readonly AnyInput[]>;
}

/** What a procedure answers: SI numbers or texts; with the steps it declared, for the shown work. */
export type Answer = number | string | readonly (number | string)[];

export interface ShownStep {
  readonly gives: Kind | 'text';
  readonly says: string;
  /** The relation in words or signs; for people, not computed. */
  readonly equation: string;
}

/** One argument as a worksheet-native form takes it. */
export interface NativeInput<V = unknown> {
  readonly given: boolean;
  /** Its SI value as worksheet text: of a quantity, or of a name that is a number; of a list an array. */
  readonly text: string;
  /** Of a list, the text of how many entries it has: a blank cell is none. */
  readonly count: string;
  /** The text of a symbol that a name binds. */
  readonly bound: (symbol: string) => string;
  /** What it is read as now. The native form then holds for this alone and refuses whatever else is put there. */
  readonly fixed: () => NonNullable<V>;
  /** Texts of what the form takes of a name: columns of the table of all names where a cell gives it, else its values. */
  readonly look: <const K extends string>(columns: Readonly<Record<K, NamedColumn<V>>>) => Record<K, string>;
  /**
   * Where a cell gives a name, and one of those that the form looks up itself, the name as text; undefined where the name
   * stays.
   */
  readonly written: (isKnown: (now: NonNullable<V>) => boolean) => string | undefined;
  /** The word of a choice as text, and where it is left out the text `whenOut`. */
  readonly word: (whenOut: string) => string;
}
/** What a copy's table holds of what a name stands for: an SI value, or text. A name for which it throws is left out. */
export interface NamedColumn<V> {
  readonly head: string;
  readonly from: (value: NonNullable<V>) => number | string;
}

/** Builds the texts of a native form. */
export interface NativeWriter {
  /** Names a part of the working, so that it is worked out once. */
  readonly step: (symbol: string, text: string) => string;
  /** Refuses where the condition, a worksheet text, holds; like the refusals of `run`. */
  readonly refuse: (condition: string, says: string) => void;
  /** From a table, the value of the last row whose first number is not above `at`; below the first row #N/A. */
  readonly stepped: (
    title: string,
    heads: readonly [from: string, value: string],
    rows: readonly (readonly [from: number, value: number | string])[],
    at: string,
  ) => string;
  /** A table of numbers; gives the text of its columns. */
  readonly columns: (
    title: string,
    heads: readonly string[],
    rows: readonly (readonly (number | string)[])[],
  ) => (at: number) => string;
  /** The system of units; the native form then holds for this one alone. */
  readonly system: () => 'in' | 'mm';
  /** One of two texts, by the system of units. */
  readonly bySystem: (inch: string, metric: string) => string;
}

export type NativeInputs<I extends readonly AnyInput[]> = {
  readonly [K in I[number] as K['name']]: NativeInput<K extends Input<string, infer V> ? V : never>;
};

export interface Procedure<
  I extends readonly AnyInput[] = readonly AnyInput[],
  S extends string = string,
> extends Common<I> {
  readonly type: 'procedure';
  readonly gives: Gives;
  /** How the result is found, in one sentence for a person who checks it. */
  readonly method: string;
  /** Numbers that the method takes from nature, a standard or a rule: named in help and work. */
  readonly constants?: Readonly<Record<string, Constant>>;
  readonly steps?: Readonly<Record<S, ShownStep>>;
  /** Receives quantities in SI; `show` keeps the value of a declared step. Refuses by throwing a `Refusal`. */
  readonly run: (
    x: Values<I>,
    show: (step: NoInfer<S>, value: number | string) => void,
    system: 'in' | 'mm',
  ) => Answer;
  /**
   * The same in a worksheet's own functions, SI in and out, where a short exact form exists; for a row, one text each.
   * Limits of the inputs are asked for by the caller. Absent or undefined: the result is passed on as a value.
   */
  readonly native?: (x: NativeInputs<I>, write: NativeWriter) => string | readonly string[] | undefined;
  readonly strength?: Strength<NameOf<I>, NoInfer<S>>;
  readonly valid?: readonly {
    readonly holds: (x: Values<I>, answer: Answer) => boolean;
    readonly says: string;
  }[];
  readonly cautions?: readonly {
    readonly when?: (x: Values<I>, answer: Answer) => boolean;
    readonly says: string;
  }[];
}

export function procedure<const I extends readonly AnyInput[], const S extends string = never>(
  definition: Omit<Procedure<I, S>, 'type'>,
): Procedure<I, S> {
  return { type: 'procedure', ...definition };
}

/** Any definition of the catalogue. */
// The parts that depend on the inputs' types are read only through `evaluate`, which pairs them up again.
/* eslint-disable @typescript-eslint/no-explicit-any */
export type Definition = Formula<any> | Lookup<any> | Procedure<any, any>;
/* eslint-enable @typescript-eslint/no-explicit-any */

export const inputsOf = (definition: Definition): readonly AnyInput[] =>
  definition.inputs as readonly AnyInput[];

/** All that made a function's results others: its own changes and those of the tables that it reads by name. */
export const changesOf = (definition: Definition): readonly Change[] => [
  ...(definition.changes ?? []),
  ...inputsOf(definition).flatMap(({ reading }) => (reading.as === 'named' ? (reading.changes ?? []) : [])),
];
