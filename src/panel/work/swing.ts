/** What a TRY.SWING in a formula found, for its picture. */
import type { Matrix } from '../../cells/value';
import { calculationOf, resultWith } from '../../call/tools/oneCalculation';
import { findDefinition } from '../../call/findDefinition';
import { readInputs } from '../../call/tools/inputsTable';
import { readUnits } from '../../call/readArgument';
import { present } from '../../call/worksheet';
import { systemUnit } from '../../core/quantity';
import type { Call } from '../../work/calls';
import { readGiven, type Surroundings } from '../../work/givenArguments';

export interface Swing {
  readonly unit: string;
  /** The result with every argument at its value. */
  readonly base: number;
  /** Largest swing first. */
  readonly lines: readonly { readonly argument: string; readonly low: number; readonly high: number }[];
}

export const isSwing = ({ id }: Call): boolean => id === 'TRY.SWING';

/** Undefined where the call refuses, or gives no numbers. */
export async function swingOf(call: Call, around: Surroundings): Promise<Swing | undefined> {
  const fn = around.functions.find(({ id }) => id === call.id);
  if (!fn) return undefined;
  const given = await Promise.all(call.args.map((arg) => readGiven(arg, around)));
  try {
    const [, ...found]: Matrix = fn.call(given.map(({ value }) => value));
    const lines = found.flatMap(([argument, low, high]) =>
      typeof low === 'number' && typeof high === 'number' ? [{ argument: String(argument), low, high }] : [],
    );
    const [name, inputs, units] = given.map(({ value }) => value);
    const system = readUnits(units?.[0]?.[0] ?? null);
    const definition = findDefinition(String(name?.[0]?.[0] ?? ''));
    const calculation = calculationOf(definition, readInputs(definition, inputs ?? [], 4), system);
    const base = present(resultWith(calculation, 0, calculation.values[0]), calculation.gives, system);
    if (typeof base !== 'number' || lines.length === 0) return undefined;
    return { unit: systemUnit(calculation.gives, system).symbol, base, lines };
  } catch {
    // What the call says itself stands in its cell.
    return undefined;
  }
}
