import { published } from '../../core/define';
import { convert, KINDS, type Kind } from '../../core/quantity';
import { findUnit, kindsWithUnit } from '../../core/readQuantity';
import { Refusal } from '../../core/refusal';
import { cellAt, commonShape, shapeOf } from '../broadcast';
import { CellError, type CellValue, type Matrix } from '../../cells/value';
import { PassedError } from '../readArgument';
import { errorCell } from '../worksheet';
import { parameter, type Tool } from './tool';

export const unitConvert: Tool = {
  name: 'UNIT.CONVERT',
  summary: 'A value in another unit of the same kind of quantity.',
  parameters: [
    parameter('value', 'The number to convert'),
    parameter('from', 'Its unit, such as "in", "lbf", "°F"'),
    parameter('to', 'The unit wanted'),
  ],
  example: 'UNIT.CONVERT(2.5,"in","mm")',
  sources: [
    published(
      'International yard and pound agreement (1959): 1 in = 25.4 mm, 1 lb = 0.45359237 kg; CGPM 1901: g = 9.80665 m/s²',
    ),
  ],
  notes: [
    'A temperature in °F or °C is a point on the scale. For a temperature difference use the rise of the functions that take one.',
  ],
  related: ['SHOW.WORK'],
  run: (args): Matrix => {
    const names = ['value', 'from', 'to'];
    const ranges = names.map((name) => args.range(name));
    const { rows, columns } = commonShape(
      ranges.map((range, i) => ({ name: names[i] ?? '', shape: shapeOf(range) })),
    );
    return Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (__, column): CellValue => {
        try {
          const [value = null, from = null, to = null] = ranges.map((range) => cellAt(range, row, column));
          return convertCell(value, unitText(from, 'from'), unitText(to, 'to'));
        } catch (error) {
          return errorCell(error);
        }
      }),
    );
  },
};

function unitText(cell: CellValue, argument: string): string {
  if (cell instanceof CellError) throw new PassedError(cell);
  if (typeof cell !== 'string' || cell.trim() === '')
    throw new Refusal('takes the symbol of a unit as text', argument);
  return cell.trim();
}

function convertCell(value: CellValue, from: string, to: string): number {
  if (value instanceof CellError) throw new PassedError(value);
  if (typeof value !== 'number' && value !== null)
    throw new Refusal(`is ${JSON.stringify(value)}; it takes a number`, 'value');
  const kinds = kindsWithUnit(from);
  const [first] = kinds;
  if (first === undefined) throw new Refusal(`is "${from}", which is no unit known here`, 'from');
  const shared = kinds.find((kind) => findUnit(kind, to));
  if (shared === undefined)
    throw new Refusal(`is "${to}"; from "${from}", a ${KINDS[first].says}, it takes ${symbols(first)}`, 'to');
  const [source, target] = [findUnit(shared, from), findUnit(shared, to)];
  if (!source || !target) throw new Refusal(`cannot be reached from "${from}"`, 'to');
  return convert(value ?? 0, source, target);
}

const symbols = (kind: Kind): string => KINDS[kind].units.map(({ symbol }) => symbol).join(', ');
