import type { Answer, Bearing, Column, Definition, Formula, Gives, Lookup, Procedure } from './define';
import { equationsOf } from './equations';
import type { Kind, System } from './quantity';
import { Refusal } from './refusal';

/** What a definition answers, and nothing of how: the working, its texts and its validity are in `evaluate.ts`. */

/** Values of a definition's inputs in their order: SI numbers, words, table rows; undefined where left out. */
export type InputValues = readonly unknown[];

/** Answers in SI. Throws a `Refusal` where the inputs make no sense together. */
export type Runner = (values: InputValues, system: System) => Answer;

export type AnyProcedure = Procedure & {
  readonly run: (x: never, show: (step: string, value: number | string) => void, system: System) => Answer;
};

export const byName = (procedure: Procedure, values: InputValues): never =>
  Object.fromEntries(procedure.inputs.map(({ name }, i) => [name, values[i]])) as never;

/** The column that a lookup's second input chooses; the only one where there is no choice. */
function columnOf(lookup: Lookup, values: InputValues): Column<unknown> {
  const [only] = Object.keys(lookup.columns);
  const word = lookup.inputs.length > 1 ? String(values[1]) : only;
  return lookup.columns[word ?? ''] as Column<unknown>;
}

export function runLookup(lookup: Lookup, values: InputValues): number | string {
  const column = columnOf(lookup, values);
  const value = column.from(values[0]);
  if (value !== undefined) return value;
  const says = column.missing?.(values[0]) ?? `The table has no ${column.says} for this row.`;
  throw new Refusal(says, lookup.inputs.at(-1)?.name, '#N/A');
}

const ignore = (): void => undefined;

function makeRunner(definition: Definition): Runner {
  switch (definition.type) {
    case 'formula':
      return equationsOf(definition as Formula);
    case 'lookup':
      return (values) => runLookup(definition as Lookup, values);
    case 'procedure': {
      const procedure = definition as AnyProcedure;
      return (values, system) => procedure.run(byName(procedure, values), ignore, system);
    }
  }
}

const runners = new WeakMap<Definition, Runner>();

/** What answers for a definition; whoever calls it often keeps it. */
export function runnerOf(definition: Definition): Runner {
  let runner = runners.get(definition);
  if (!runner) {
    runner = makeRunner(definition);
    runners.set(definition, runner);
  }
  return runner;
}

export const answer = (definition: Definition, values: InputValues, system: System): Answer =>
  runnerOf(definition)(values, system);

/** The steps that are stresses of a definition's strength, where it gets so far. */
export function stressesOf(
  definition: Definition,
  values: InputValues,
  system: System,
): { readonly symbol: string; readonly value: number | string }[] {
  if (definition.type === 'lookup') return [];
  const bearings: readonly Bearing[] = definition.strength ?? [];
  if (definition.type === 'formula') {
    const found: number[] = [];
    equationsOf(definition as Formula)(values, system, found);
    return found.map((value, i) => ({ symbol: (bearings[i] as Bearing).stress, value }));
  }
  const shown = new Map<string, number | string>();
  const procedure = definition as AnyProcedure;
  procedure.run(byName(procedure, values), (step, value) => shown.set(step, value), system);
  return bearings.flatMap(({ stress: symbol }) => {
    const value = shown.get(symbol);
    return value === undefined ? [] : [{ symbol, value }];
  });
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
