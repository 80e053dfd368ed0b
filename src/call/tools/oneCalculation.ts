import { inputsOf, type AnyInput, type Definition } from '../../core/define';
import { answer, givesOf } from '../../core/answer';
import type { Kind, System } from '../../core/quantity';
import { naming, Refusal } from '../../core/refusal';
import type { CellValue } from '../../cells/value';
import { readerOf } from '../readArgument';
import { readCall } from '../readCall';
import { argumentsFrom, type InputRow } from './inputsTable';

/** A function at one set of inputs, whose single result is a number; the base from which a tool varies. */
export interface Calculation {
  readonly definition: Definition;
  readonly system: System;
  /** In SI, in the order of the inputs. */
  readonly values: readonly unknown[];
  readonly gives: Kind;
}

/** Reads the first value of every row of `inputs`. */
export function calculationOf(definition: Definition, rows: readonly InputRow[], units: System): Calculation {
  const call = naming('inputs', () =>
    readCall(
      definition,
      argumentsFrom(definition, rows, ({ cells }) => cells[0] ?? null, units),
    ),
  );
  const { values, system } = call.at(0, 0);
  const gives = givesOf(definition, values);
  if (typeof gives !== 'string' || gives === 'text') {
    throw new Refusal(`${definition.name} does not answer with one number`, 'function');
  }
  return { definition, system, values, gives };
}

/** One cell read as the value of an input, under the name of the tool's own argument. */
export function readAs(
  definition: Definition,
  index: number,
  cell: CellValue,
  system: System,
  argument: string,
): unknown {
  const input = inputsOf(definition)[index];
  if (!input) throw new Refusal(`${definition.name} has no such argument`, argument);
  return naming(argument, () => readerOf(input)(cell, system));
}

/** The calculation with one input changed. An argument that was left out and follows the changed one follows it still. */
export function changed(calculation: Calculation, index: number, value: unknown): Calculation {
  const values = [...calculation.values];
  for (const place of placesOf(calculation, index)) values[place] = value;
  return { ...calculation, values };
}

/** The numeric result with one input changed; refuses an answer in words. */
export function resultWith(calculation: Calculation, index: number, value: unknown): number {
  return resultsOver(calculation, index)(value);
}

/** The numeric result by the value of one input, for those who ask many times. */
export function resultsOver(calculation: Calculation, index: number): (value: unknown) => number {
  const { definition, system } = calculation;
  const values = [...calculation.values];
  const places = placesOf(calculation, index);
  return (value) => {
    for (const place of places) values[place] = value;
    const result = answer(definition, values, system);
    if (typeof result !== 'number')
      throw new Refusal(`${definition.name} answers "${String(result)}", which is not a number`, 'function');
    return result;
  };
}

/** An input and those that follow it. */
function placesOf({ definition, values }: Calculation, index: number): readonly number[] {
  const inputs = inputsOf(definition);
  const { name } = inputs[index] as AnyInput;
  return inputs.flatMap(({ sameAs }, i) =>
    i === index || (sameAs === name && values[i] === values[index]) ? [i] : [],
  );
}
