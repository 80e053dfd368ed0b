import { namedConstants, type NamedConstant } from './constants';
import type { AnyInput, Formula, Step } from './define';
import type { Dimension } from './dimension';
import { fold, prune } from './expr/fold';
import { parseEquation } from './expr/parse';
import { compile, type Runner } from './expr/run';
import { num, op, rewrite, variables, type Expr } from './expr/tree';
import { KINDS, type Kind } from './quantity';
import { findUnit } from './readQuantity';

/**
 * A formula made ready to run for one variant: which words its choices hold and which optional inputs are given.
 * Everything that depends on those is settled here, so that the running form has no branch for it.
 */
export interface Program {
  readonly load: (values: readonly unknown[]) => void;
  readonly slots: Float64Array;
  readonly symbols: readonly SlotSymbol[];
  /** Numbers that the equations name; they run as literals. */
  readonly constants: readonly NamedConstant[];
  readonly steps: readonly CompiledStep[];
  readonly start: readonly Gate[];
  readonly result: number;
  readonly valid: readonly { readonly holds: Runner; readonly test: Expr; readonly says: string }[];
  readonly cautions: readonly { readonly when: Runner | undefined; readonly says: string }[];
}

/** A symbol that an input provides. */
interface SlotSymbol {
  readonly symbol: string;
  readonly gives: Kind;
  readonly says: string;
  /** Index of the input; `pick` takes the symbol's value from what was read for it. */
  readonly input: number;
  readonly pick: (value: never) => number;
}

export interface CompiledStep {
  readonly symbol: string;
  readonly step: Step;
  readonly slot: number;
  /** As written, for printing; a fitted step's numbers are in its own units. */
  readonly written: Expr;
  /** In SI, for running. */
  readonly expr: Expr;
  readonly run: Runner;
  /** Questions asked once this step is known. */
  readonly gates: readonly Gate[];
}

/** A condition that ends the calculation: with a refusal, or with an answer in words. */
export type Gate = { readonly when: Runner; readonly test: Expr; readonly says: string } &
  // By its place among the formula's refusals.
  (
    | { readonly type: 'refuse'; readonly index: number; readonly argument: string }
    | { readonly type: 'words' }
  );

const bindings = (
  input: AnyInput,
): Record<string, { gives: Kind; says: string; from: (row: never) => number }> =>
  input.reading.as === 'named' ? ((input.reading.binds ?? {}) as never) : {};

/** The symbols that inputs provide, in order. */
function inputSymbols(inputs: readonly AnyInput[]): SlotSymbol[] {
  return inputs.flatMap((input, index): SlotSymbol[] => {
    if (input.reading.as === 'quantity') {
      return [
        { symbol: input.symbol, gives: input.reading.kind, says: input.says, input: index, pick: (v) => v },
      ];
    }
    return Object.entries(bindings(input)).map(([symbol, { gives, says, from }]) => ({
      symbol,
      gives,
      says,
      input: index,
      pick: from,
    }));
  });
}

/** Optional inputs without a default: equations may ask `given(symbol)` for them. */
const mayBeMissing = (input: AnyInput): boolean =>
  input.optional && input.default === undefined && input.sameAs === undefined;

const variantInputs = (formula: Formula): number[] => {
  const chosenBy = new Set(Object.values(formula.steps).flatMap((step) => ('by' in step ? [step.by] : [])));
  return formula.inputs.flatMap((input, i) => (mayBeMissing(input) || chosenBy.has(input.name) ? [i] : []));
};

/** Turns the numbers of a rule of thumb from its own units into SI. */
function fitted(
  expr: Expr,
  { units, out }: NonNullable<Step['fitted']>,
  kinds: ReadonlyMap<string, Kind>,
  gives: Kind,
): Expr {
  const factor = (kind: Kind, symbol: string): number => {
    const unit = findUnit(kind, symbol);
    if (!unit) throw new Error(`no unit ${symbol} for a ${KINDS[kind].says}`);
    return unit.factor;
  };
  const inside = rewrite(expr, (node) => {
    if (node.type !== 'var') return node;
    const unit = units[node.name];
    const kind = kinds.get(node.name);
    return unit === undefined || kind === undefined ? node : op('div', node, num(factor(kind, unit)));
  });
  return op('mul', inside, num(factor(gives, out)));
}

function build(formula: Formula, values: readonly unknown[]): Program {
  const symbols = inputSymbols(formula.inputs);
  const slotOf = new Map(symbols.map(({ symbol }, i) => [symbol, i]));
  const kinds = new Map(symbols.map(({ symbol, gives }) => [symbol, gives]));
  const missing = new Set(
    symbols.filter(({ input }) => values[input] === undefined).map(({ symbol }) => symbol),
  );

  const constants = namedConstants(formula.constants);
  const valueOf = new Map(constants.map(({ symbol, si }) => [symbol, si]));
  for (const { symbol, gives } of constants) kinds.set(symbol, gives);
  const settled = (e: Expr): Expr =>
    rewrite(e, (node) =>
      node.type === 'var' && valueOf.has(node.name) ? num(valueOf.get(node.name) ?? NaN) : node,
    );

  const slot = (name: string): number => slotOf.get(name) as number;
  const read = (text: string): Expr =>
    fold(
      settled(
        parseEquation(
          text,
          (name) => slotOf.has(name) || valueOf.has(name),
          (name) => !missing.has(name),
        ),
      ),
    );
  const ready = (text: string): Runner => compile(read(text), slot);

  // Where a condition can first be asked: after the last step among its symbols.
  const order = Object.keys(formula.steps);
  for (const symbol of order) slotOf.set(symbol, slotOf.size);
  const askedAfter = (text: string): number =>
    Math.max(-1, ...[...variables(read(text))].map((name) => order.indexOf(name)));
  const gates: { after: number; gate: Gate }[] = (formula.refuse ?? []).map(
    ({ when, argument, says }, index) => ({
      after: askedAfter(when),
      gate: { type: 'refuse', when: ready(when), test: read(when), index, argument, says },
    }),
  );
  if (formula.inWords) {
    const { when, says } = formula.inWords;
    gates.push({
      after: askedAfter(when),
      gate: { type: 'words', when: ready(when), test: read(when), says },
    });
  }
  const gatesAfter = (i: number): Gate[] => gates.filter(({ after }) => after === i).map(({ gate }) => gate);

  const steps = Object.entries<Step>(formula.steps).map(([symbol, step], i): CompiledStep => {
    const text = 'by' in step ? step.cases[chosen(formula, step.by, values)] : step.expr;
    if (text === undefined) throw new Error(`${formula.name}: ${symbol} has no case for ${step.says}`);
    const known = (name: string): boolean =>
      valueOf.has(name) || (slotOf.has(name) && !(order.indexOf(name) >= i));
    const written = prune(parseEquation(text, known, (name) => !missing.has(name)));
    const expr = fold(settled(step.fitted ? fitted(written, step.fitted, kinds, step.gives) : written));
    kinds.set(symbol, step.gives);
    return {
      symbol,
      step,
      slot: slot(symbol),
      written,
      expr,
      run: compile(expr, slot),
      gates: gatesAfter(i),
    };
  });

  const slots = new Float64Array(slotOf.size);
  // Quantities go into their slots as they are; of one that is left out, `undefined` becomes NaN there.
  const from = Int32Array.from(symbols, ({ input }) => input);
  const picks = symbols.map(({ input, pick }) =>
    formula.inputs[input]?.reading.as === 'named' ? (pick as (row: unknown) => number) : undefined,
  );
  return {
    symbols,
    constants,
    slots,
    steps,
    start: gatesAfter(-1),
    result: slot(formula.result),
    load: (given) => {
      for (let i = 0; i < from.length; i++) {
        const value = given[from[i] as number];
        const pick = picks[i];
        slots[i] = pick === undefined || value === undefined ? (value as number) : pick(value);
      }
    },
    valid: (formula.valid ?? []).map(({ holds, says }) => ({ holds: ready(holds), test: read(holds), says })),
    cautions: (formula.cautions ?? []).map(({ when, says }) => ({
      when: when === undefined ? undefined : ready(when),
      says,
    })),
  };
}

const chosen = (formula: Formula, by: string, values: readonly unknown[]): string =>
  String(values[formula.inputs.findIndex(({ name }) => name === by)]);

/** What a variant depends on of one input: the word of a choice, else whether it is given. */
const markOf = (value: unknown): string | boolean =>
  typeof value === 'string' ? value : value !== undefined;

interface Variant {
  readonly marks: readonly (string | boolean)[];
  readonly program: Program;
}

/** A program with what it is for: the word of each keyed input that chooses an equation, else whether it is given. */
export interface KeyedProgram {
  readonly marks: readonly { readonly input: number; readonly mark: string | boolean }[];
  readonly program: Program;
}

/** Every variant of a formula, whatever its other inputs hold. */
export function programsOf(formula: Formula): KeyedProgram[] {
  const inputs: readonly AnyInput[] = formula.inputs;
  const wordsOf = ({ reading }: AnyInput): readonly string[] =>
    reading.as === 'choice' ? reading.words : [];
  const any = (input: AnyInput): unknown => wordsOf(input)[0] ?? NaN;
  const start: { marks: KeyedProgram['marks']; values: readonly unknown[] }[] = [
    { marks: [], values: inputs.map(any) },
  ];
  const variants = variantInputs(formula).reduce((found, at) => {
    const input = inputs[at] as AnyInput;
    const words = wordsOf(input);
    const options = [
      ...(words.length > 0
        ? words.map((word) => ({ mark: word, value: word }))
        : [{ mark: true, value: NaN }]),
      ...(mayBeMissing(input) ? [{ mark: false, value: undefined }] : []),
    ];
    return found.flatMap(({ marks, values }) =>
      options.map(({ mark, value }) => ({
        marks: [...marks, { input: at, mark }],
        values: values.map((other, i) => (i === at ? value : other)),
      })),
    );
  }, start);
  return variants.map(({ marks, values }) => ({ marks, program: build(formula, values) }));
}

interface Variants {
  /** Inputs on which the variant depends. */
  readonly keyed: readonly number[];
  /** The one used last stands first: a column of calls asks for the same again and again. */
  readonly known: Variant[];
}

const variants = new WeakMap<Formula, Variants>();

function variantsOf(formula: Formula): Variants {
  const first = { keyed: variantInputs(formula), known: [] };
  variants.set(formula, first);
  return first;
}

const fits = ({ marks }: Variant, keyed: readonly number[], values: readonly unknown[]): boolean => {
  for (let k = 0; k < keyed.length; k++) {
    if (marks[k] !== markOf(values[keyed[k] as number])) return false;
  }
  return true;
};

/** The program for these values; each variant is built once. */
export function programFor(formula: Formula, values: readonly unknown[]): Program {
  const { keyed, known } = variants.get(formula) ?? variantsOf(formula);
  const [last] = known;
  if (last && fits(last, keyed, values)) return last.program;
  const at = known.findIndex((variant) => fits(variant, keyed, values));
  const [found] = at < 0 ? [] : known.splice(at, 1);
  const used = found ?? { marks: keyed.map((i) => markOf(values[i])), program: build(formula, values) };
  known.unshift(used);
  return used.program;
}

/** The dimension of every symbol of a program, for the check of its equations. */
export const symbolDimensions = (program: Program): Map<string, Dimension> =>
  new Map([
    ...program.symbols.map(({ symbol, gives }) => [symbol, KINDS[gives].dimension] as const),
    ...program.constants.map(({ symbol, gives }) => [symbol, KINDS[gives].dimension] as const),
    ...program.steps.map(({ symbol, step }) => [symbol, KINDS[step.gives].dimension] as const),
  ]);
