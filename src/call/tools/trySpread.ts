import { boundsOf, inBounds } from '../../core/amount';
import { derived } from '../../core/define';
import { quantityText } from '../../core/format';
import { systemUnit, type Kind } from '../../core/quantity';
import { seededDeviates, SPREADS, summarize, type Spread } from '../../core/random';
import { naming, Refusal } from '../../core/refusal';
import { foldName } from '../../core/names';
import { runnerOf } from '../../core/answer';
import type { CellValue, Matrix } from '../../cells/value';
import { findDefinition } from '../findDefinition';
import { amountReader } from '../readArgument';
import { present } from '../worksheet';
import { readInputs, type InputRow } from './inputsTable';
import { calculationOf, type Calculation } from './oneCalculation';
import { FUNCTION, SEED, TRIALS, UNITS } from './parameters';
import { parameter, type Tool } from './tool';

const MOST_TRIALS = 1_000_000;

export const trySpread: Tool = {
  name: 'TRY.SPREAD',
  summary:
    'How a function’s result spreads when its arguments do: mean, sigma, percentiles, least and largest.',
  parameters: [
    FUNCTION,
    parameter(
      'inputs',
      `Range of four columns: the name of an argument, its value, its tolerance ±, its shape: ${SPREADS.join(', ')}`,
    ),
    TRIALS,
    SEED,
    UNITS,
  ],
  example: 'TRY.SPREAD("FILL.GATE",{"wall",2,0.3,"uniform"},20000,7,"mm")',
  sources: [derived('Seeded trials of the function itself; Mersenne Twister MT19937')],
  notes: [
    'One row: mean, sigma, the 0.135, 50 and 99.865 percentiles, least, largest. "normal" takes the tolerance as three sigma.',
    'The arguments are taken as independent. The mean’s standard error is sigma over the root of the trials.',
  ],
  related: ['TRY.SWING', 'STACK.TRIALS'],
  run: (args): Matrix => {
    const definition = naming('function', () => findDefinition(args.text('function')));
    const units = args.units();
    const trials = args.count('trials');
    if (trials > MOST_TRIALS || trials < 2)
      throw new Refusal(`is ${trials}; it must be at least 2 and at most ${MOST_TRIALS}`, 'trials');
    const rows = readInputs(definition, args.range('inputs'), 4);
    const calculation = calculationOf(definition, rows, units);
    const results = spread(calculation, rows, trials, args.count('seed'));
    let [least, largest] = [Infinity, -Infinity];
    for (const result of results) {
      if (result < least) least = result;
      if (result > largest) largest = result;
    }
    const { mean, sigma, low, median, high } = summarize(results);
    const shown = (si: number): CellValue => present(si, calculation.gives, units);
    // A sigma is a difference: it has no zero point of a scale.
    const shownSigma = sigma / systemUnit(calculation.gives, units).factor;
    return [[shown(mean), shownSigma, shown(low), shown(median), shown(high), shown(least), shown(largest)]];
  },
};

interface Varied {
  readonly index: number;
  readonly draw: () => number;
  readonly allowed: (x: number) => boolean;
  readonly name: string;
  readonly text: (x: number) => string;
}

/** A tolerance is a difference, so one of a temperature is a rise. */
const differenceKind = (kind: Kind): Kind => (kind === 'temperature' ? 'rise' : kind);

const isBlank = (cell: CellValue | undefined): boolean =>
  cell === undefined || cell === null || cell === '' || cell === 0;

function varied(calculation: Calculation, rows: readonly InputRow[], seed: number): Varied[] {
  const deviates = seededDeviates(seed);
  return rows.flatMap(({ index, input, cells: [, tolerance, shape] }): Varied[] => {
    if (isBlank(tolerance)) return [];
    const { reading } = input;
    const at = calculation.values[index];
    if (reading.as !== 'quantity' || typeof at !== 'number') {
      throw new Refusal(`give ${input.name} a tolerance, but it is not a quantity`, 'inputs');
    }
    const { kind } = reading;
    const limit = naming('inputs', () =>
      amountReader(differenceKind(kind))(tolerance ?? null, calculation.system),
    ) as number;
    const draw = deviates(spreadOf(shape ?? null), Math.abs(limit));
    const bounds = boundsOf(reading, kind);
    const round = kind === 'count' ? Math.round : (x: number): number => x;
    return [
      {
        index,
        name: input.name,
        draw: () => round(at + draw()),
        allowed: (x) => inBounds(x, bounds),
        text: (x) => quantityText(x, kind, calculation.system),
      },
    ];
  });
}

function spreadOf(cell: CellValue): Spread {
  if (isBlank(cell)) return 'normal';
  const word = foldName(String(cell));
  const found = SPREADS.find((spread) => spread === word);
  if (!found) throw new Refusal(`name the shape "${String(cell)}"; it is ${SPREADS.join(', ')}`, 'inputs');
  return found;
}

function spread(
  calculation: Calculation,
  rows: readonly InputRow[],
  trials: number,
  seed: number,
): Float64Array {
  const { definition, system, values } = calculation;
  const parts = varied(calculation, rows, seed);
  const trial = [...values];
  const results = new Float64Array(trials);
  const run = runnerOf(definition);
  // Counted, since this is the loop that a person waits for.
  for (let i = 0; i < trials; i++) {
    for (let k = 0; k < parts.length; k++) {
      const part = parts[k] as Varied;
      const x = part.draw();
      if (!part.allowed(x))
        throw new Refusal(
          `let ${part.name} spread to ${part.text(x)}, which ${definition.name} does not take`,
          'inputs',
        );
      trial[part.index] = x;
    }
    const result = run(trial, system);
    if (typeof result !== 'number')
      throw new Refusal(`answers "${String(result)}" in one of the trials`, 'function');
    results[i] = result;
  }
  return results;
}
