import type { Formula, RefuseWhen, Step } from './define';
import { Refusal } from './refusal';

/** Refuses by a formula's own condition; with the values of the steps that its message names. */
export function refuseInputs(
  formula: Formula,
  index: number,
  steps: Readonly<Record<string, number>> = {},
): never {
  const { says, argument } = formula.refuse?.[index] as RefuseWhen;
  throw new Refusal(
    says,
    argument,
    '#VALUE!',
    Object.fromEntries(
      Object.entries(steps).map(([symbol, value]) => [
        symbol,
        { value, gives: (formula.steps[symbol] as Step).gives },
      ]),
    ),
  );
}

/** The value of a step; refuses where there is none. */
export function finite(value: number, equation: string): number {
  if (!Number.isFinite(value)) notFinite(equation);
  return value;
}

export function notFinite(equation: string): never {
  throw new Refusal(`The step ${equation} has no finite value with these inputs.`);
}
