import type { Definition, Formula } from '../../src/core/define';
import { dimensionText, RATIO, sameDimension, type Dimension } from '../../src/core/dimension';
import { inferDimension } from '../../src/core/expr/dims';
import { prune } from '../../src/core/expr/fold';
import { parseEquation } from '../../src/core/expr/parse';
import type { Expr } from '../../src/core/expr/tree';
import { programFor, symbolDimensions } from '../../src/core/program';
import { KINDS } from '../../src/core/quantity';

/** What is wrong with the dimensions of a formula's steps and conditions; undefined where all fit. */
export function dimensionFault(definition: Definition, values: readonly unknown[]): string | undefined {
  try {
    const formula = definition as Formula;
    const dims = symbolDimensions(programFor(formula, values));
    return stepFault(formula, values, dims) ?? conditionFault(formula, values, dims);
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

type Dimensions = ReadonlyMap<string, Dimension>;

const inferred = (written: Expr, dims: Dimensions) =>
  inferDimension(written, (name) => dims.get(name) ?? RATIO);

function stepFault(formula: Formula, values: readonly unknown[], dims: Dimensions): string | undefined {
  for (const { symbol, step, written } of programFor(formula, values).steps) {
    if (step.fitted) continue;
    const found = inferred(written, dims);
    const declared = KINDS[step.gives].dimension;
    if (found !== 'any' && !sameDimension(found, declared)) {
      return `${symbol} is ${dimensionText(found)}, declared ${dimensionText(declared)}`;
    }
  }
  return undefined;
}

/** Every condition of a formula, as it is written. */
export const conditionsOf = ({ refuse, inWords, valid, cautions }: Formula): string[] => [
  ...(refuse ?? []).map(({ when }) => when),
  ...(inWords ? [inWords.when] : []),
  ...(valid ?? []).map(({ holds }) => holds),
  ...(cautions ?? []).flatMap(({ when }) => when ?? []),
];

function conditionFault(formula: Formula, values: readonly unknown[], dims: Dimensions): string | undefined {
  const { symbols } = programFor(formula, values);
  const missing = new Set(
    symbols.filter(({ input }) => values[input] === undefined).map(({ symbol }) => symbol),
  );
  for (const text of conditionsOf(formula)) {
    const condition = prune(
      parseEquation(
        text,
        (name) => dims.has(name),
        (name) => !missing.has(name),
      ),
    );
    const found = inferred(condition, dims);
    if (found !== 'any' && !sameDimension(found, RATIO))
      return `the condition "${text}" is ${dimensionText(found)}, and neither true nor false`;
  }
  return undefined;
}

/** What bears the same symbol twice among inputs, constants and steps. */
export function symbolFault(formula: Formula, values: readonly unknown[]): string | undefined {
  const { symbols, constants, steps } = programFor(formula, values);
  const all = [...symbols, ...constants, ...steps].map(({ symbol }) => symbol);
  const twice = all.find((symbol, i) => all.indexOf(symbol) !== i);
  return twice === undefined ? undefined : `${twice} stands for two things`;
}

/** Constants that no equation and no condition names. */
export function unusedConstants(formula: Formula): string[] {
  const texts = [
    ...Object.values(formula.steps).flatMap((step) =>
      'by' in step ? Object.values(step.cases) : [step.expr],
    ),
    ...conditionsOf(formula),
  ];
  return Object.keys(formula.constants ?? {}).filter(
    (symbol) => !texts.some((text) => new RegExp(`(?<!\\w)${symbol}(?!\\w)`).test(text)),
  );
}
