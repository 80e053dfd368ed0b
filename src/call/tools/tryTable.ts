import { derived, inputsOf } from '../../core/define';
import { naming, Refusal } from '../../core/refusal';
import type { Argument, CellValue, Matrix } from '../../cells/value';
import { findDefinition, inputIndex } from '../findDefinition';
import { callDefinition } from '../worksheet';
import { argumentsFrom, isRange, readInputs } from './inputsTable';
import { FUNCTION, INPUTS, UNITS } from './parameters';
import { parameter, type Tool } from './tool';

const isCell = (cell: CellValue | undefined): cell is CellValue =>
  cell !== null && cell !== '' && cell !== undefined;

export const tryTable: Tool = {
  name: 'TRY.TABLE',
  summary: 'Table of a function’s results over one or two of its arguments.',
  parameters: [
    FUNCTION,
    INPUTS,
    parameter('argA', 'Name of the argument that goes down the rows'),
    parameter('valuesA', 'Its values: one row or one column'),
    parameter('argB', 'Name of the argument that goes across the columns', { optional: true }),
    parameter('valuesB', 'Its values: one row or one column', { optional: true }),
    UNITS,
  ],
  example:
    'TRY.TABLE("SEAT.FORCE",{"push",1000;"draft",5;"friction",0.15},"draft",{3;5;10},"push",{1000,2000},"mm")',
  sources: [derived('The function itself, at each value')],
  notes: [
    'What stands in inputs for the two varied arguments is not used. A result that is refused stands as an error in its place.',
    'The worksheet’s own data tables stay empty over functions of an add-in: use this one, or the panel’s What if.',
  ],
  related: ['TRY.SOLVE', 'TRY.SWING', 'TRY.SPREAD'],
  run: (args): Matrix => {
    const definition = naming('function', () => findDefinition(args.text('function')));
    const units = args.units();
    const rows = readInputs(definition, args.range('inputs'), 2);
    const [a, valuesA] = varied(args.text('argA'), args.range('valuesA'), 'argA', 'valuesA');
    const second = args.rangeIfGiven('argB') && args.text('argB');
    const [b, valuesB] =
      second === undefined ? [undefined, []] : varied(second, args.range('valuesB'), 'argB', 'valuesB');
    if (a === b) throw new Refusal(`is ${args.text('argA')} as well; it takes another argument`, 'argB');
    const fixed = argumentsFrom(definition, rows, ({ cells }) => cells[0] ?? null, units);
    const call: Argument[] = fixed.map((given, i) =>
      i === a ? valuesA.map((value) => [value]) : i === b ? [valuesB] : given,
    );
    const results = callDefinition(definition, call);
    const width = b === undefined ? 1 : valuesB.length;
    const [first = []] = results;
    // Of a call that was refused as a whole, or of a function that answers in a row, there is no table to make.
    if (results.length !== valuesA.length || first.length !== width) {
      if (results.length === 1 && first.length === 1) return results;
      throw new Refusal(
        `${definition.name} answers in more than one cell; a table takes a function of one`,
        'function',
      );
    }
    const nameOf = (index: number): string => inputsOf(definition)[index]?.name ?? '';
    const head: CellValue[] =
      b === undefined ? [nameOf(a), definition.name] : [`${nameOf(a)} \\ ${nameOf(b)}`, ...valuesB];
    return [head, ...valuesA.map((value, i): CellValue[] => [value, ...(results[i] ?? [])])];

    function varied(name: string, range: Matrix, argument: string, values: string): [number, CellValue[]] {
      const index = naming(argument, () => inputIndex(definition, name));
      if (isRange(definition, index)) throw new Refusal(`is ${name}, which is a list`, argument);
      if (range.length > 1 && (range[0]?.length ?? 0) > 1)
        throw new Refusal('takes one row or one column', values);
      const cells = range.flat().filter(isCell);
      if (cells.length === 0) throw new Refusal('holds no values', values);
      return [index, cells];
    }
  },
};
