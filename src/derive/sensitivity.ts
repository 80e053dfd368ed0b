import type { Formula } from '../core/define';
import { interpreted } from '../core/interpret';
import { derivative } from '../core/expr/diff';
import { compile, type Runner } from '../core/expr/run';
import { variables } from '../core/expr/tree';
import { programFor, type Program } from '../core/program';

/** How a step changes with each symbol in it. */
interface StepSlope {
  readonly slot: number;
  readonly by: readonly { readonly slot: number; readonly slope: Runner }[];
}

const slopes = new WeakMap<Program, readonly StepSlope[]>();

function slopesOf(program: Program): readonly StepSlope[] {
  let known = slopes.get(program);
  if (!known) {
    const slotOf = new Map([
      ...program.symbols.map(({ symbol }, i) => [symbol, i] as const),
      ...program.steps.map(({ symbol, slot }) => [symbol, slot] as const),
    ]);
    const slot = (name: string): number => slotOf.get(name) as number;
    known = program.steps.map((step) => ({
      slot: step.slot,
      by: [...variables(step.expr)].map((name) => ({
        slot: slot(name),
        slope: compile(derivative(step.expr, name), slot),
      })),
    }));
    slopes.set(program, known);
  }
  return known;
}

/**
 * The derivative of a formula's result with respect to one quantity input, in SI, exact: every step's derivative by
 * the chain rule from the input to the result. Throws `NoDerivative` where a step rounds; NaN where the answer is words.
 */
export function slopeBy(formula: Formula, values: readonly unknown[], input: number): number {
  // Leaves every value in the slots.
  if (typeof interpreted(formula)(values) !== 'number') return NaN;
  const program = programFor(formula, values);
  const { slots } = program;
  const change = new Float64Array(slots.length);
  const at = program.symbols.findIndex((symbol) => symbol.input === input);
  if (at < 0) return NaN;
  change[at] = 1;
  for (const { slot, by } of slopesOf(program)) {
    let total = 0;
    for (const part of by) {
      const own = change[part.slot] as number;
      // A slope that is infinite where nothing changes must not spoil the sum.
      if (own !== 0) total += part.slope(slots) * own;
    }
    change[slot] = total;
  }
  return change[program.result] as number;
}
