import { inputsOf, type Formula } from '../../src/core/define';
import { runnerOf } from '../../src/core/answer';
import { toJs } from '../../src/core/expr/js';
import { raise } from '../../src/core/expr/raise';
import { erf } from '../../src/core/erf';
import { programFor } from '../../src/core/program';
import { catalogue } from '../../src/catalogue';
import { defaultValue } from '../../src/call/readArgument';
import { amountSI } from '../../src/core/amount';
import { nanoseconds } from './measure';

/** Short, since there are many. */
const ROUND_MS = 12;

type Plain = (values: readonly unknown[]) => number;

/**
 * The equations of one variant as a person would write them on SI numbers: one expression after the other, without
 * looking whether a step has a value.
 */
function plainForm(formula: Formula, values: readonly unknown[]): Plain {
  const { symbols, steps } = programFor(formula, values);
  const place = (symbol: string): string => `_${symbol}`;
  const picks = symbols.map(({ pick }) => pick);
  const lines = [
    ...symbols.map(({ symbol, input }, i) =>
      formula.inputs[input]?.reading.as === 'named'
        ? `const ${place(symbol)} = v[${input}] === undefined ? NaN : picks[${i}](v[${input}]);`
        : `const ${place(symbol)} = v[${input}];`,
    ),
    ...steps.map(({ symbol, expr }) => `const ${place(symbol)} = ${toJs(expr, place)};`),
    `return ${place(formula.result)};`,
  ];
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- made for this measurement alone, and shipped nowhere
  const make = new Function('picks', 'raise', 'erf', `return (v) => {${lines.join('\n')}};`) as (
    ...given: unknown[]
  ) => Plain;
  return make(picks, raise, erf);
}

/** Values in the middle of what is usual; undefined where an input takes a name that cannot be made up. */
function usualValues(formula: Formula): unknown[] | undefined {
  const values = inputsOf(formula).map(({ reading, ...input }) => {
    const standard = defaultValue({ reading, ...input }, 'mm');
    if (standard !== undefined) return standard;
    if (reading.as === 'choice') return reading.words[0];
    if (reading.as === 'named') return reading.read(reading.names?.()[0] ?? 'P20', 'mm', 'text') as unknown;
    if (reading.as !== 'quantity' || input.optional) return undefined;
    const [low = 0.2, high = 0.4] = (reading.usual ?? []).map((amount) => amountSI(amount, reading.kind));
    return low + (high - low) * 0.4;
  });
  return values;
}

export interface FormCost {
  readonly id: string;
  readonly plain: number;
  readonly core: number;
}

/**
 * Nanoseconds of every formula of the catalogue that answers at usual values, beside its plain form. Of that an engine
 * leaves out steps that the result does not rest on, such as a stress for the margin; ours asks them for a finite value.
 */
export function closedForms(): FormCost[] {
  return catalogue.flatMap((definition): FormCost[] => {
    if (definition.type !== 'formula') return [];
    const formula = definition as Formula;
    try {
      const first = usualValues(formula) ?? [];
      const varied = Array.from({ length: 64 }, (_, turn) =>
        first.map((value) => (typeof value === 'number' ? value * (1 + turn / 1e5) : value)),
      );
      const run = runnerOf(formula);
      const plain = plainForm(formula, first);
      for (const values of varied)
        if (run(values, 'mm') !== plain(values))
          throw new Error(`${formula.name} differs from its plain form`);
      const of = (turn: number): readonly unknown[] => varied[turn % 64] as readonly unknown[];
      return [
        {
          id: formula.name,
          plain: nanoseconds((turn) => plain(of(turn)), ROUND_MS),
          core: nanoseconds((turn) => run(of(turn), 'mm'), ROUND_MS),
        },
      ];
    } catch {
      // Refused at these values: counted as not measured.
      return [];
    }
  });
}
