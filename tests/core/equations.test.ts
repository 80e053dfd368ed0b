import fc from 'fast-check';
import { all, create, type EvalFunction, type FactoryFunctionMap } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/catalogue';
import { amountSI, boundsOf } from '../../src/core/amount';
import { inputsOf, type AnyInput, type Definition, type Formula, type Step } from '../../src/core/define';
import { equationsOf } from '../../src/core/equations';
import { evaluate } from '../../src/core/evaluate';
import { interpreted } from '../../src/core/interpret';
import { programFor } from '../../src/core/program';
import { findUnit } from '../../src/core/readQuantity';
import { Refusal } from '../../src/core/refusal';
import { checksOf } from '../support/checks';

const isFormula = (definition: Definition): definition is Formula => definition.type === 'formula';
const formulas = catalogue.filter(isFormula).map((formula) => [formula.name, formula] as const);

/** Anything that an input may hold: usual and unusual amounts, limits themselves, every word, names and numbers. */
function anyValue(formula: Formula, { reading, optional, ...input }: AnyInput): fc.Arbitrary<unknown> {
  const leftOut = optional && input.default === undefined && input.sameAs === undefined;
  const tried = checksOf(formula).map(
    ({ given }) => (given as Readonly<Record<string, unknown>>)[input.name],
  );
  const held = heldValue(reading, tried);
  return leftOut ? fc.option(held, { nil: undefined, freq: 2 }) : held;
}

function heldValue(reading: AnyInput['reading'], tried: readonly unknown[]): fc.Arbitrary<unknown> {
  switch (reading.as) {
    case 'choice':
      return fc.constantFrom(...reading.words);
    case 'quantity': {
      const { low, high } = boundsOf(reading, reading.kind);
      const [from = 0, to = 1] = (reading.usual ?? []).map((amount) => amountSI(amount, reading.kind));
      const limits = [low, high, from, to].filter(Number.isFinite);
      // Without the numbers next to zero that hold no more digits.
      const usual = fc.double({ min: from, max: to, noNaN: true }).map((x) => (Math.abs(x) < 1e-30 ? 0 : x));
      return fc.oneof({ arbitrary: usual, weight: 8 }, fc.constantFrom(...limits));
    }
    case 'named': {
      // A name that several rows share is refused before any equation sees it.
      const names = (reading.names?.() ?? tried)
        .map((name) => outcome(() => reading.read(String(name), 'mm', 'text')))
        .filter((found) => !(found instanceof Refused));
      const { number } = reading;
      const numbers = number ? [0.5, 2, 200].map((x) => number.means(x) as unknown) : [];
      return fc.constantFrom(...names, ...numbers);
    }
    default:
      throw new Error(`No equation reads a ${reading.as}`);
  }
}

const anyValues = (formula: Formula): fc.Arbitrary<unknown[]> =>
  fc.tuple(...inputsOf(formula).map((input) => anyValue(formula, input)));

/** A refusal with all that it carries. */
class Refused {
  constructor(readonly because: object) {}
}

function outcome(run: () => unknown): unknown {
  try {
    return run();
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const { message, argument, code, steps } = error;
    return new Refused({ message, argument, code, steps });
  }
}

describe.each(formulas)('the equations of %s', (_, formula) => {
  it('compiled give what they give interpreted, to the bit, and refuse alike', () => {
    const compiled = equationsOf(formula);
    const closures = interpreted(formula);
    // The test would prove nothing where the build did not replace the module.
    expect(equationsOf).not.toBe(interpreted);
    expect(String(compiled)).not.toBe(String(closures));
    fc.assert(
      fc.property(anyValues(formula), (values) => {
        const [ours, theirs]: [number[], number[]] = [[], []];
        expect(outcome(() => compiled(values, 'mm', ours))).toStrictEqual(
          outcome(() => closures(values, 'mm', theirs)),
        );
        expect(ours).toStrictEqual(theirs);
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  it('give step by step what mathjs makes of their text, to 1e-12', () => {
    fc.assert(
      fc.property(anyValues(formula), (values) => {
        if (typeof outcome(() => equationsOf(formula)(values)) !== 'number') return;
        const known = new Map<string, number>();
        for (const { symbol, si } of programFor(formula, values).constants) known.set(symbol, si);
        for (const { symbol, input, pick } of programFor(formula, values).symbols)
          if (values[input] !== undefined)
            known.set(
              symbol,
              formula.inputs[input]?.reading.as === 'named'
                ? pick(values[input] as never)
                : (values[input] as number),
            );
        for (const { symbol, value } of evaluate(formula, values, 'mm').steps) {
          const theirs = byMathjs(formula, formula.steps[symbol] as Step, values, known);
          const ours = value as number;
          expect(Math.abs(theirs - ours), `${symbol}: ${ours} ${theirs}`).toBeLessThanOrEqual(
            1e-12 * Math.max(Math.abs(ours), Math.abs(theirs)),
          );
          known.set(symbol, ours);
        }
      }),
      // The same numbers each time: a difference of two almost equal squares may lose more by chance.
      { numRuns: 25, seed: 1, endOnFailure: true },
    );
  });
});

// Compares as floating point does, without the tolerance that is meant for people.
const math = create(all as FactoryFunctionMap, { relTol: 1e-15, absTol: 1e-300 });
const read = new Map<string, EvalFunction>();

function byMathjs(
  formula: Formula,
  step: Step,
  values: readonly unknown[],
  known: ReadonlyMap<string, number>,
): number {
  const chosen = 'by' in step ? values[formula.inputs.findIndex(({ name }) => name === step.by)] : undefined;
  const text = ('by' in step ? (step.cases[String(chosen)] ?? '') : step.expr).replace(
    /given\((\w+)\)/g,
    (_, symbol: string) => String(known.has(symbol)),
  );
  let equation = read.get(text);
  if (!equation) {
    equation = math.compile(text);
    read.set(text, equation);
  }
  const scope = new Map<string, unknown>([...known, ['ln', Math.log]]);
  const factor = (symbol: string, unit: string): number => {
    const kinds = [...programFor(formula, values).symbols, ...programFor(formula, values).constants];
    const kind = kinds.find((one) => one.symbol === symbol)?.gives ?? (formula.steps[symbol] as Step).gives;
    return findUnit(kind, unit)?.factor ?? NaN;
  };
  for (const [symbol, unit] of Object.entries(step.fitted?.units ?? {}))
    if (known.has(symbol)) scope.set(symbol, (known.get(symbol) ?? NaN) / factor(symbol, unit));
  const out = step.fitted ? (findUnit(step.gives, step.fitted.out)?.factor ?? NaN) : 1;
  return Number(equation.evaluate(scope)) * out;
}
