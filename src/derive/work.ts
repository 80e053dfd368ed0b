import { namedConstants, type NamedConstant } from '../core/constants';
import {
  inputsOf,
  type AnyInput,
  type Definition,
  type Entry,
  type Formula,
  type Procedure,
} from '../core/define';
import { givesOf } from '../core/answer';
import { evaluate, type Evaluation } from '../core/evaluate';
import { programFor } from '../core/program';
import type { Kind } from '../core/quantity';
import { marginText } from '../core/strength';

/** One line of the shown work: an input, a named constant, a step or the result. Values are in SI or in words. */
export interface WorkLine {
  readonly role: 'input' | 'constant' | 'step' | 'result';
  readonly symbol: string;
  readonly says: string;
  /** The relation, as text; empty for inputs. */
  readonly equation: string;
  readonly gives: Kind | 'text';
  readonly value: number | string;
  /** Place among the definition's inputs, for the lines that one of them gives. */
  readonly input?: number;
}

export interface Work extends Evaluation {
  readonly lines: readonly WorkLine[];
}

/** The symbols of the lines that tell the strength; no step or input of a definition with `strength` bears them. */
export const YIELD = 'S_y';
export const MARGIN = 'n_y';

/** The words or name that an input was given as, for a line of the work. */
export type GivenText = (input: AnyInput, index: number) => string;

export const entriesText = (entries: readonly Entry<unknown>[]): string =>
  entries.map(({ written }) => String(written)).join(', ');

function inputLines(definition: Definition, values: readonly unknown[], given: GivenText): WorkLine[] {
  const bound = definition.type === 'formula' ? programFor(definition as Formula, values).symbols : [];
  return inputsOf(definition).flatMap((input, i): WorkLine[] => {
    const value = values[i];
    if (value === undefined) return [];
    const line = { role: 'input', says: input.says, equation: '', input: i } as const;
    if (input.reading.as === 'quantity') {
      return [{ ...line, symbol: input.symbol, gives: input.reading.kind, value: value as number }];
    }
    if (input.reading.as === 'list') {
      const { kind } = input.reading;
      return (value as readonly number[]).map((v, k) => ({
        ...line,
        symbol: `${input.symbol}_${k + 1}`,
        gives: kind,
        value: v,
      }));
    }
    const text =
      input.reading.as === 'set' ? entriesText(value as readonly Entry<unknown>[]) : given(input, i);
    const named: WorkLine = { ...line, symbol: input.name, gives: 'text', value: text };
    const symbols = bound
      .filter(({ input: of }) => of === i)
      .map(({ symbol, says, gives, pick }): WorkLine => ({
        ...line,
        symbol,
        says,
        gives,
        value: pick(value as never),
      }));
    return [named, ...symbols];
  });
}

/** The numbers that the equations name, as they were written: `p_n = 1 atm`. */
const constantLines = (definition: Definition, values: readonly unknown[]): WorkLine[] =>
  constantsIn(definition, values).map(({ symbol, is, says, gives, si }): WorkLine => ({
    role: 'constant',
    symbol,
    says,
    equation: `${symbol} = ${is}`,
    gives,
    value: si,
  }));

function constantsIn(definition: Definition, values: readonly unknown[]): readonly NamedConstant[] {
  switch (definition.type) {
    case 'formula':
      return programFor(definition as Formula, values).constants;
    case 'procedure':
      return namedConstants((definition as Procedure).constants);
    case 'lookup':
      return [];
  }
}

/** The yield of the metal that bears the governing stress, and how many times the stress it is. */
function strengthLines({ strength }: Evaluation): WorkLine[] {
  if (strength?.yield === undefined || !Number.isFinite(strength.margin)) return [];
  const { margin = Infinity, stress, metal } = strength;
  return [
    {
      role: 'step',
      symbol: YIELD,
      says: `Yield of ${metal} at 20 °C, typical`,
      equation: 'from the table of metals',
      gives: 'pressure',
      value: strength.yield,
    },
    {
      role: 'step',
      symbol: MARGIN,
      says: marginText(margin),
      equation: `${MARGIN} = ${YIELD}/${stress}`,
      gives: 'ratio',
      value: margin,
    },
  ];
}

/** Every input, step and the result of one calculation, in the order in which a person would write them down. */
export function workOf(
  definition: Definition,
  values: readonly unknown[],
  system: 'in' | 'mm',
  given: GivenText,
): Work {
  const evaluation = evaluate(definition, values, system);
  const { answer, steps } = evaluation;
  const gives = givesOf(definition, values);
  const inputs = [...inputLines(definition, values, given), ...constantLines(definition, values)];
  const working = steps.map((step): WorkLine => ({ role: 'step', ...step }));
  const strength = strengthLines(evaluation);
  // One of a formula's steps is its result; a procedure's or a table's result stands on a line of its own.
  if (definition.type === 'formula' && typeof answer === 'number') {
    const { result } = definition as Formula;
    const isResult = ({ symbol }: WorkLine): boolean => symbol === result;
    const last = working.filter(isResult).map((line): WorkLine => ({ ...line, role: 'result' }));
    return {
      ...evaluation,
      lines: [...inputs, ...working.filter((line) => !isResult(line)), ...strength, ...last],
    };
  }
  const equation =
    definition.type === 'procedure'
      ? definition.method
      : definition.type === 'lookup'
        ? 'value of the table'
        : 'in words';
  const parts = typeof gives === 'string' ? [{ gives, says: definition.summary }] : gives.row;
  const answers = typeof answer === 'object' ? answer : [answer];
  const results = answers.map((value, i): WorkLine => ({
    role: 'result',
    symbol: 'result',
    says: parts[i]?.says ?? definition.summary,
    equation,
    gives: typeof value === 'string' ? 'text' : (parts[i]?.gives ?? 'ratio'),
    value,
  }));
  return { ...evaluation, lines: [...inputs, ...working, ...strength, ...results] };
}
