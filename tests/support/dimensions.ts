import type { Definition, Formula } from '../../src/core/define';
import { dimensionText, RATIO, sameDimension } from '../../src/core/dimension';
import { inferDimension } from '../../src/core/expr/dims';
import { programFor, symbolDimensions } from '../../src/core/program';
import { KINDS } from '../../src/core/quantity';

/** What is wrong with the dimensions of a formula's steps; undefined where all fit. */
export function dimensionFault(definition: Definition, values: readonly unknown[]): string | undefined {
  try {
    const program = programFor(definition as Formula, values);
    const dims = symbolDimensions(program);
    for (const { symbol, step, written } of program.steps) {
      if (step.fitted) continue;
      const inferred = inferDimension(written, (name) => dims.get(name) ?? RATIO);
      const declared = KINDS[step.gives].dimension;
      if (inferred !== 'any' && !sameDimension(inferred, declared)) {
        return `${symbol} is ${dimensionText(inferred)}, declared ${dimensionText(declared)}`;
      }
    }
    return undefined;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}
