import {
  inputsOf,
  type Answer,
  type Column,
  type Definition,
  type Formula,
  type Gives,
  type Lookup,
  type Procedure,
} from './define';
import { toText } from './expr/text';
import { programFor, type CompiledStep, type Gate, type Program } from './program';
import type { Kind, System } from './quantity';
import { Refusal } from './refusal';
import { marginCaution, marginOf, type Margin } from './strength';

/** One line of the working, with its value in SI or in words. */
export interface StepValue {
  readonly symbol: string;
  readonly says: string;
  readonly equation: string;
  readonly gives: Kind | 'text';
  readonly value: number | string;
}

export interface Evaluation {
  readonly answer: Answer;
  readonly steps: readonly StepValue[];
  /** Sentences about what lies outside the range of validity; empty when all is in range. */
  readonly outside: readonly string[];
  /** Cautions that these values call for. */
  readonly cautions: readonly string[];
  /** Of a function that knows both load and material. */
  readonly strength?: Margin;
}

/** Values of a definition's inputs in their order: SI numbers, words, table rows; undefined where left out. */
export type InputValues = readonly unknown[];

function passGates(gates: readonly Gate[], { slots, steps }: Program): string | undefined {
  for (const gate of gates) {
    if (gate.when(slots) === 0) continue;
    if (gate.type === 'words') return gate.says;
    const named = steps.filter(({ symbol }) => gate.says.includes(`{${symbol}}`));
    throw new Refusal(
      gate.says,
      gate.argument,
      '#VALUE!',
      Object.fromEntries(
        named.map(({ symbol, slot, step }) => [symbol, { value: slots[slot] as number, gives: step.gives }]),
      ),
    );
  }
  return undefined;
}

/** Runs a formula's steps in order; the slots then hold every value. */
function runFormula(formula: Formula, values: InputValues): number | string {
  const program = programFor(formula, values);
  const { slots, steps, start } = program;
  program.load(values);
  if (start.length > 0) {
    const words = passGates(start, program);
    if (words !== undefined) return words;
  }
  // Indexed: this loop is the cost of a call.
  for (let i = 0; i < steps.length; i++) {
    const step = steps[i] as CompiledStep;
    const value = step.run(slots);
    if (!Number.isFinite(value)) return noValue(step);
    slots[step.slot] = value;
    if (step.gates.length > 0) {
      const words = passGates(step.gates, program);
      if (words !== undefined) return words;
    }
  }
  return slots[program.result] as number;
}

function noValue({ symbol, written }: CompiledStep): never {
  throw new Refusal(`The step ${symbol} = ${toText(written)} has no finite value with these inputs.`);
}

/** With the margin against yield, and the caution that it calls for before all others. */
function withStrength(definition: Definition, values: InputValues, found: Evaluation): Evaluation {
  const strength = marginOf(definition, values, found.steps);
  if (!strength) return found;
  const caution = marginCaution(strength);
  return { ...found, strength, cautions: [...(caution === undefined ? [] : [caution]), ...found.cautions] };
}

function formulaEvaluation(formula: Formula, values: InputValues): Evaluation {
  const { slots, steps, valid, cautions } = programFor(formula, values);
  // An answer in words leaves steps undone; they must not show what an earlier calculation left.
  for (const { slot } of steps) slots[slot] = NaN;
  const answer = runFormula(formula, values);
  const done = typeof answer === 'number' ? steps : [];
  return {
    answer,
    steps: done.map(({ symbol, step, written, slot }) => ({
      symbol,
      says: step.says,
      equation: `${symbol} = ${toText(written)}`,
      gives: step.gives,
      value: slots[slot] as number,
    })),
    outside:
      typeof answer === 'number'
        ? valid.filter(({ holds }) => holds(slots) === 0).map(({ says }) => says)
        : [],
    cautions: cautions.filter(({ when }) => when === undefined || when(slots) !== 0).map(({ says }) => says),
  };
}

/** The column that a lookup's second input chooses; the only one where there is no choice. */
function columnOf(lookup: Lookup, values: InputValues): Column<unknown> {
  const [only] = Object.keys(lookup.columns);
  const word = lookup.inputs.length > 1 ? String(values[1]) : only;
  return lookup.columns[word ?? ''] as Column<unknown>;
}

function runLookup(lookup: Lookup, values: InputValues): number | string {
  const column = columnOf(lookup, values);
  const value = column.from(values[0]);
  if (value !== undefined) return value;
  const says = column.missing?.(values[0]) ?? `The table has no ${column.says} for this row.`;
  throw new Refusal(says, lookup.inputs.at(-1)?.name, '#N/A');
}

type AnyProcedure = Procedure & {
  readonly run: (x: never, show: (step: string, value: number | string) => void, system: System) => Answer;
};

const byName = (procedure: Procedure, values: InputValues): never =>
  Object.fromEntries(procedure.inputs.map(({ name }, i) => [name, values[i]])) as never;

function procedureEvaluation(procedure: AnyProcedure, values: InputValues, system: System): Evaluation {
  const x = byName(procedure, values);
  const shown = new Map<string, number | string>();
  const answer = procedure.run(x, (step, value) => shown.set(step, value), system);
  const steps = Object.entries(procedure.steps ?? {}).flatMap(([symbol, { gives, says, equation }]) => {
    const value = shown.get(symbol);
    return value === undefined ? [] : [{ symbol, says, equation, gives, value }];
  });
  return {
    answer,
    steps,
    outside: (procedure.valid ?? []).filter(({ holds }) => !holds(x, answer)).map(({ says }) => says),
    cautions: (procedure.cautions ?? [])
      .filter(({ when }) => when === undefined || when(x, answer))
      .map(({ says }) => says),
  };
}

const ignore = (): void => undefined;

/** The answer alone, in SI. Throws a `Refusal` where the inputs make no sense together. */
export function answer(definition: Definition, values: InputValues, system: System): Answer {
  switch (definition.type) {
    case 'formula':
      return runFormula(definition as Formula, values);
    case 'lookup':
      return runLookup(definition as Lookup, values);
    case 'procedure':
      return (definition as AnyProcedure).run(byName(definition as Procedure, values), ignore, system);
  }
}

/** What to watch for with the materials that are named, each once. */
function notesOf(definition: Definition, values: InputValues): readonly string[] {
  const notes = inputsOf(definition).flatMap(({ reading }, i) =>
    reading.as === 'named' && values[i] !== undefined ? (reading.notes?.(values[i]) ?? []) : [],
  );
  return [...new Set(notes)];
}

/** The answer with its working, validity and cautions. */
export function evaluate(definition: Definition, values: InputValues, system: System): Evaluation {
  const found = evaluated(definition, values, system);
  const notes = notesOf(definition, values);
  return notes.length === 0 ? found : { ...found, cautions: [...found.cautions, ...notes] };
}

function evaluated(definition: Definition, values: InputValues, system: System): Evaluation {
  switch (definition.type) {
    case 'formula':
      return withStrength(definition, values, formulaEvaluation(definition as Formula, values));
    case 'lookup': {
      const found = runLookup(definition as Lookup, values);
      return {
        answer: found,
        steps: [],
        outside: [],
        cautions: (definition.cautions ?? []).map(({ says }) => says),
      };
    }
    case 'procedure':
      return withStrength(
        definition,
        values,
        procedureEvaluation(definition as AnyProcedure, values, system),
      );
  }
}

/** What kind of thing a definition answers with these values; a choice that decides it is settled. */
export function givesOf(definition: Definition, values: InputValues): Exclude<Gives, { by: string }> {
  switch (definition.type) {
    case 'formula': {
      const formula = definition as Formula;
      return (formula.steps[formula.result] as { gives: Kind }).gives;
    }
    case 'lookup':
      return columnOf(definition as Lookup, values).gives;
    case 'procedure': {
      const { gives, inputs, name } = definition as Procedure;
      if (typeof gives === 'string' || 'row' in gives) return gives;
      const value = values[inputs.findIndex((input) => input.name === gives.by)];
      const word = gives.word ? gives.word(value as never) : String(value);
      const kind = gives.kinds[word];
      if (kind === undefined) throw new Error(`${name} gives nothing for ${word}`);
      return kind;
    }
  }
}
