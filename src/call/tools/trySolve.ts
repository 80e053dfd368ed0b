import { amountReader } from '../readArgument';
import { derived, inputsOf, published } from '../../core/define';
import { quantityText } from '../../core/format';
import { naming, Refusal } from '../../core/refusal';
import { NotBracketed, solveBracketed } from '../../core/solve';
import type { Matrix } from '../../cells/value';
import { findDefinition, inputIndex } from '../findDefinition';
import { present } from '../worksheet';
import { readInputs } from './inputsTable';
import { calculationOf, readAs, resultWith } from './oneCalculation';
import { FUNCTION, INPUTS, UNITS } from './parameters';
import { parameter, type Tool } from './tool';

/** Of the way to the ends' results. Near a jump a bracket closes without the function meeting the target. */
const MET = 1e-6;

export const trySolve: Tool = {
  name: 'TRY.SOLVE',
  summary: 'The value of one argument at which a function gives a target.',
  parameters: [
    FUNCTION,
    INPUTS,
    parameter('argument', 'Name of the argument to find'),
    parameter('target', 'The result wanted, in the result’s unit'),
    parameter('low', 'Lowest value of the argument to look at'),
    parameter('high', 'Highest value of the argument to look at'),
    UNITS,
  ],
  example: 'TRY.SOLVE("SEAT.CLEAR",{"lift",2;"draft",5},"draft",0.25,1,20,"in")',
  sources: [
    derived('The function itself between the two values'),
    published('ITP method: Oliveira and Takahashi, ACM Transactions on Mathematical Software 47 (2021) 5'),
  ],
  notes: [
    'The target must lie between the results at low and high; if it does not, the refusal says what the ends give.',
    'The worksheet’s own goal seek does not work with functions of an add-in: use this one.',
  ],
  related: ['TRY.TABLE', 'TRY.SWING'],
  run: (args): Matrix => {
    const definition = naming('function', () => findDefinition(args.text('function')));
    const units = args.units();
    const index = naming('argument', () => inputIndex(definition, args.text('argument')));
    const reading = inputsOf(definition)[index]?.reading;
    if (reading?.as !== 'quantity')
      throw new Refusal(`is ${args.text('argument')}, which is not a quantity`, 'argument');
    const low = readAs(definition, index, args.cell('low'), units, 'low') as number;
    const high = readAs(definition, index, args.cell('high'), units, 'high') as number;
    if (low >= high)
      throw new Refusal(`is ${quantityText(high, reading.kind, units)}; it must be above low`, 'high');

    // The argument sought may be left out of inputs: it starts at the low end.
    const rows = readInputs(definition, args.range('inputs'), 2).filter((row) => row.index !== index);
    const given = [
      ...rows,
      { index, input: inputsOf(definition)[index], cells: [args.cell('low')] },
    ] as typeof rows;
    const calculation = calculationOf(definition, given, units);
    const { gives } = calculation;
    const target = naming('target', () => amountReader(gives)(args.cell('target'), units)) as number;
    const text = (si: number): string => quantityText(si, gives, units);
    try {
      const off = (value: number): number => resultWith(calculation, index, value) - target;
      const x = solveBracketed(off, low, high);
      if (Math.abs(off(x)) > MET * Math.max(Math.abs(off(low)), Math.abs(off(high)))) {
        throw new Refusal(
          `is ${text(target)}, which the result jumps over, at ${quantityText(x, reading.kind, units)}`,
          'target',
        );
      }
      return [[present(x, reading.kind, units)]];
    } catch (error) {
      if (!(error instanceof NotBracketed)) throw error;
      const [a, b] = [text(error.atLow + target), text(error.atHigh + target)];
      throw new Refusal(
        `is ${text(target)}, but ${definition.name} gives ${a} at low and ${b} at high`,
        'target',
      );
    }
  },
};
