import { published } from '../../core/define';
import { convert, KINDS, type Kind } from '../../core/quantity';
import { kindsWithUnit, readQuantity, unitsBetween } from '../../core/readQuantity';
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
    parameter('value', 'The number to convert; as text a fraction too, such as "3/8"'),
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
    'From threads per inch to a length gives the pitch, and the other way round. From rpm to 1/s gives turns, not radians.',
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

function convertCell(cell: CellValue, from: string, to: string): number {
  const value = numberOf(cell);
  const between = unitsBetween(from, to);
  if (between) {
    const converted = between.inverse
      ? 1 / (value * between.source.factor * between.target.factor)
      : convert(value, between.source, between.target);
    if (Number.isFinite(converted)) return converted;
    throw new Refusal(`is ${value}, which has no value in ${to}`, 'value');
  }
  const [kind] = kindsWithUnit(from);
  if (kind === undefined) throw new Refusal(`is "${from}", which is no unit known here`, 'from');
  throw new Refusal(`is "${to}"; from "${from}", a ${KINDS[kind].says}, it takes ${symbols(kind)}`, 'to');
}

function numberOf(cell: CellValue): number {
  if (cell instanceof CellError) throw new PassedError(cell);
  if (typeof cell === 'number') return cell;
  if (cell === null) throw new Refusal('is missing: its cell is blank', 'value');
  const read = typeof cell === 'string' ? readQuantity(cell, 'count') : undefined;
  if (read?.ok) return read.plain;
  const comma = read?.problem === 'comma' ? ', which has a comma: decimals take a point' : '';
  throw new Refusal(`is ${JSON.stringify(cell)}${comma}; it takes a number such as 2.5 or "1 1/2"`, 'value');
}

const symbols = (kind: Kind): string => KINDS[kind].units.map(({ symbol }) => symbol).join(', ');
