import type { Formula } from './define';
import { toText } from './expr/text';
import { programFor, type Gate, type Program } from './program';
import type { System } from './quantity';
import { finite, refuseInputs } from './refuseFormula';

/**
 * A formula's equations in one go: its result in SI, or its answer in words. Throws a `Refusal`. Into `stresses` go the
 * steps that its strength names, where it gets so far.
 */
export type Equations = (values: readonly unknown[], system?: System, stresses?: number[]) => number | string;

function passGates(formula: Formula, gates: readonly Gate[], { slots, steps }: Program): string | undefined {
  for (const gate of gates) {
    if (gate.when(slots) === 0) continue;
    if (gate.type === 'words') return gate.says;
    const named = steps.filter(({ symbol }) => gate.says.includes(`{${symbol}}`));
    refuseInputs(
      formula,
      gate.index,
      Object.fromEntries(named.map(({ symbol, slot }) => [symbol, slots[slot] as number])),
    );
  }
  return undefined;
}

/**
 * A formula's equations run by closures, from their text. Builds put compiled functions in their place: see
 * `equations.ts`.
 */
export const interpreted =
  (formula: Formula): Equations =>
  (values, _system, stresses) => {
    const program = programFor(formula, values);
    const { slots, steps, start } = program;
    program.load(values);
    const words = passGates(formula, start, program);
    if (words !== undefined) return words;
    for (const step of steps) {
      const value = step.run(slots);
      if (!Number.isFinite(value)) finite(value, `${step.symbol} = ${toText(step.written)}`);
      slots[step.slot] = value;
      const said = passGates(formula, step.gates, program);
      if (said !== undefined) return said;
    }
    if (stresses)
      for (const { stress } of formula.strength ?? [])
        stresses.push(slots[steps.find(({ symbol }) => symbol === stress)?.slot ?? NaN] ?? NaN);
    return slots[program.result] as number;
  };
