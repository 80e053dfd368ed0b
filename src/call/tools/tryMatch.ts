import { derived, inputsOf, type AnyInput, type Definition } from '../../core/define';
import { quantityText } from '../../core/format';
import { BestAtEnd, leastSquares, NoInfluence } from '../../core/leastSquares';
import { systemUnit } from '../../core/quantity';
import { naming, Refusal } from '../../core/refusal';
import { takenNumber } from '../../core/takenNumber';
import type { CellValue, Matrix } from '../../cells/value';
import { findDefinition, inputIndex } from '../findDefinition';
import { amountReader, quantityReader, readerOf } from '../readArgument';
import { present } from '../worksheet';
import { isRange, readInputs, type InputRow } from './inputsTable';
import { calculationOf, changed, readAs, resultsOver } from './oneCalculation';
import { FUNCTION, INPUTS, UNITS } from './parameters';
import { parameter, type Tool } from './tool';

export const tryMatch: Tool = {
  name: 'TRY.MATCH',
  summary:
    'The value of one argument that fits measured results best, with its standard error and the largest miss.',
  parameters: [
    FUNCTION,
    INPUTS,
    parameter('argument', 'Name of the argument to find, such as a friction that cannot be measured itself'),
    parameter('varied', 'Name of the argument that was changed from trial to trial'),
    parameter('values', 'What it was in each trial: one row or one column'),
    parameter('measured', 'What came out of each trial, in the result’s unit'),
    parameter('low', 'Lowest value of the argument to look at'),
    parameter('high', 'Highest value of the argument to look at'),
    UNITS,
  ],
  example:
    'TRY.MATCH("SEAT.FORCE",{"push",300;"draft",5},"friction","draft",{3,5,8},{1196,1044,893},0.02,0.6)',
  sources: [
    derived(
      'Least squares in one parameter, by golden sections and Gauss–Newton; standard error √(SSE/(n − 1)/Σ(dy/dθ)²)',
    ),
  ],
  notes: [
    'Where the argument is a name that a number may stand for, such as the diffusivity for a resin, the number is found.',
    'One row: the value, its standard error, the largest miss (measured less predicted). Trials without a value and a result are passed over.',
    'The standard error tells how far the scatter of the trials leaves the value open, not whether the function describes them: look at the largest miss.',
  ],
  related: ['TRY.SOLVE', 'TRY.SWING', 'TRY.TABLE'],
  run: (args): Matrix => {
    const definition = naming('function', () => findDefinition(args.text('function')));
    const units = args.units();
    const index = naming('argument', () => inputIndex(definition, args.text('argument')));
    const varied = naming('varied', () => inputIndex(definition, args.text('varied')));
    const input = inputsOf(definition)[index] as AnyInput;
    const { name, reading } = input;
    const sought = takenNumber(reading);
    if (!sought || sought.kind === 'count')
      throw new Refusal(`is ${name}, which is not a quantity that can take any value`, 'argument');
    if (isRange(definition, varied))
      throw new Refusal(`is ${args.text('varied')}, which is a list`, 'varied');
    if (varied === index) throw new Refusal(`is ${name}, which is the argument sought`, 'varied');
    const read = reading.as === 'quantity' ? readerOf(input) : quantityReader(sought.kind, sought.limits);
    const [low, high] = (['low', 'high'] as const).map((end) =>
      naming(end, () => read(args.cell(end), units)),
    ) as [number, number];
    if (low >= high)
      throw new Refusal(`is ${quantityText(high, sought.kind, units)}; it must be above low`, 'high');

    const trials = trialCells(args.range('values'), args.range('measured'));
    const rows = readInputs(definition, args.range('inputs'), 2);
    const calculation = calculationOf(
      definition,
      [
        ...rows.filter((row) => row.index !== index && row.index !== varied),
        row(definition, index, args.cell('low')),
        row(definition, varied, trials[0]?.value ?? null),
      ],
      units,
    );
    const predicted = trials.map(({ value }) =>
      resultsOver(changed(calculation, varied, readAs(definition, varied, value, units, 'values')), index),
    );
    const measured = trials.map(
      (trial) => naming('measured', () => amountReader(calculation.gives)(trial.measured, units)) as number,
    );
    const residuals = (x: number): number[] => {
      const value = sought.means(x);
      return predicted.map((at, i) => (measured[i] as number) - at(value));
    };
    // The ends are asked for by the person, who must know why one has no value.
    residuals(low);
    residuals(high);

    const unit = systemUnit(sought.kind, units);
    const missUnit = systemUnit(calculation.gives, units);
    try {
      const fit = leastSquares((x) => passing(() => residuals(x)), low, high);
      // Differences have no zero point of a scale.
      return [
        [
          present(fit.x, sought.kind, units),
          fit.standardError / unit.factor,
          fit.largestMiss / missUnit.factor,
        ],
      ];
    } catch (error) {
      if (error instanceof NoInfluence)
        throw new Refusal(`is ${name}, which changes nothing in these trials`, 'argument');
      if (!(error instanceof BestAtEnd)) throw error;
      const end = error.end === 'low' ? low : high;
      throw new Refusal(
        `is ${quantityText(end, sought.kind, units)}, and the best value lies there: look further`,
        error.end,
      );
    }
  },
};

const row = (definition: Definition, index: number, cell: CellValue): InputRow => ({
  index,
  input: inputsOf(definition)[index] as AnyInput,
  cells: [cell],
});

const isBlank = (cell: CellValue | undefined): boolean => cell === null || cell === '' || cell === undefined;

interface Trial {
  readonly value: CellValue;
  readonly measured: CellValue;
}

function trialCells(values: Matrix, measured: Matrix): readonly Trial[] {
  const [x, y] = [listOf(values, 'values'), listOf(measured, 'measured')];
  if (x.length !== y.length)
    throw new Refusal(`has ${y.length} entries, but values has ${x.length}; give one for each`, 'measured');
  const trials = x.flatMap((value, i): Trial[] => {
    const result = y[i] ?? null;
    if (isBlank(value) && isBlank(result)) return [];
    if (isBlank(value)) throw new Refusal(`has no entry beside the ${i + 1}. measured result`, 'values');
    if (isBlank(result)) throw new Refusal(`has no entry beside the ${i + 1}. value`, 'measured');
    return [{ value, measured: result }];
  });
  if (trials.length < 2)
    throw new Refusal(
      `holds ${trials.length === 1 ? 'one trial' : 'no trials'}; a fit takes at least two`,
      'values',
    );
  return trials;
}

function listOf(range: Matrix, argument: string): readonly CellValue[] {
  if (range.length > 1 && (range[0]?.length ?? 0) > 1)
    throw new Refusal('takes one row or one column', argument);
  return range.flat();
}

/** Nothing where the function refuses. */
function passing<T>(part: () => T): T | undefined {
  try {
    return part();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
