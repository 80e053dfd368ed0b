import { naming } from '../../core/refusal';
import { derived } from '../../core/define';
import { fromSI, systemUnit, type Kind } from '../../core/quantity';
import type { CellValue, Matrix } from '../../cells/value';
import { findDefinition } from '../findDefinition';
import { present } from '../worksheet';
import { readInputs, type InputRow } from './inputsTable';
import { calculationOf, readAs, resultsOver, resultWith, type Calculation } from './oneCalculation';
import { FUNCTION, UNITS } from './parameters';
import { slopeAt } from './slope';
import { parameter, type Tool } from './tool';

const HEADINGS = ['argument', 'at low', 'at high', 'swing', '% per %'];

export const trySwing: Tool = {
  name: 'TRY.SWING',
  summary: 'Which argument matters most: the result at each one’s low and high, largest swing first.',
  parameters: [
    FUNCTION,
    parameter('inputs', 'Range of four columns: the name of an argument, its value, its low, its high'),
    UNITS,
  ],
  example:
    'TRY.SWING("CLAMP.FORCE",{"projectedArea",900,800,1000;"cavityPressure",25,20,30;"margin",1.2,1.1,1.3},"mm")',
  sources: [derived('The function itself at the low and high of one argument, the others at their values')],
  notes: [
    'The last column is the local change of the result, in percent for one percent of the argument, at the values themselves.',
  ],
  related: ['TRY.SPREAD', 'TRY.TABLE'],
  run: (args): Matrix => {
    const definition = naming('function', () => findDefinition(args.text('function')));
    const units = args.units();
    const rows = readInputs(definition, args.range('inputs'), 4);
    const calculation = calculationOf(definition, rows, units);
    const lines = rows.map((row) => swingOf(calculation, row));
    lines.sort((a, b) => b.swing - a.swing);
    return [HEADINGS, ...lines.map(({ cells }) => cells)];
  },
};

function swingOf(
  calculation: Calculation,
  { index, input, cells }: InputRow,
): { swing: number; cells: CellValue[] } {
  const { definition, system, gives } = calculation;
  const at = (cell: CellValue): number =>
    resultWith(calculation, index, readAs(definition, index, cell, system, 'inputs'));
  const low = at(cells[1] ?? null);
  const high = at(cells[2] ?? null);
  const unit = systemUnit(gives, system);
  // A difference has no zero point, so a swing of temperatures is in degrees.
  const swing = Math.abs(high - low) / unit.factor;
  const local =
    input.reading.as === 'quantity' ? localChange(calculation, index, input.reading.kind) : 'not a number';
  return {
    swing,
    cells: [input.name, present(low, gives, system), present(high, gives, system), swing, local],
  };
}

/** Percent of the result for one percent of the argument, both as the worksheet shows them. */
function localChange(calculation: Calculation, index: number, kind: Kind): number | string {
  const { system, values, gives } = calculation;
  const x = values[index] as number;
  const [from, to] = [systemUnit(kind, system), systemUnit(gives, system)];
  const [shownX, shownY] = [fromSI(x, from), fromSI(resultWith(calculation, index, x), to)];
  if (shownX === 0 || shownY === 0) return 'at zero';
  const slope = slopeAt(resultsOver(calculation, index), x);
  const change = ((slope * from.factor) / to.factor) * (shownX / shownY);
  return Number.isFinite(change) ? change : 'none here';
}
