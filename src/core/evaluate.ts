import { byName, runLookup, type AnyProcedure, type InputValues } from './answer';
import { inputsOf, type Answer, type Definition, type Formula, type Lookup } from './define';
import { toText } from './expr/text';
import { interpreted } from './interpret';
import { programFor } from './program';
import type { Kind, System } from './quantity';
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
  const answer = interpreted(formula)(values);
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
