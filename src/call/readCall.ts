import { inputsOf, takesRange, type AnyInput, type Definition } from '../core/define';
import { quantityText } from '../core/format';
import type { System } from '../core/quantity';
import { naming, Refusal } from '../core/refusal';
import { cellAt, commonShape, shapeOf, type Shape } from './broadcast';
import type { Argument, CellValue, Matrix } from '../cells/value';
import { inPlaces } from './places';
import { defaultValue, readerOf, readUnits, type CellReader } from './readArgument';

/** Above this a worksheet is better served by several smaller calls; Excel itself struggles with larger arguments. */
const MOST_CELLS = 50_000;

/** One argument during a call. Equal neighbouring cells are read once: a fixed argument beside a long column costs nothing. */
interface Given {
  readonly input: AnyInput;
  readonly matrix: Matrix | undefined;
  readonly valueAt: (row: number, column: number, system: System) => unknown;
}

/** The values of one place of the common shape, in SI. */
export interface Place {
  readonly system: System;
  readonly values: readonly unknown[];
}

/** The arguments of one call, taken apart. `at` throws a `Refusal` that names the argument. */
export interface ReadCall {
  /** In the places of the inputs, units last; undefined where left out. */
  readonly args: readonly (Matrix | undefined)[];
  readonly shape: Shape;
  readonly systemAt: (row: number, column: number) => System;
  readonly at: (row: number, column: number) => Place;
  /** Puts the values of this place into a refusal of inputs that do not go together. */
  readonly explain: (refusal: Refusal, place: Place) => Refusal;
}

export function readCall(definition: Definition, typed: readonly Argument[]): ReadCall {
  const inputs = inputsOf(definition);
  // The units come after the inputs.
  const most = inputs.length + 1;
  if (typed.length > most) {
    throw new Refusal(`${definition.name} takes at most ${most} arguments; ${typed.length} were given.`);
  }
  const args = inPlaces(typed, inputs.length, (cells) => cells);
  const given = inputs.map((input, i) => readGiven(input, args[i]));
  const units = args[inputs.length];
  const systemAt = (row: number, column: number): System =>
    units ? naming('units', () => readUnits(cellAt(units, row, column))) : 'in';
  return {
    args,
    shape: shapeOfCall(given, units),
    systemAt,
    at: (row, column) => {
      const system = systemAt(row, column);
      const values = given.map(({ input, valueAt }) =>
        naming(input.name, () => valueAt(row, column, system)),
      );
      fillFollowers(given, values);
      return { system, values };
    },
    explain: (refusal, { values, system }) => withValues(refusal, given, values, system),
  };
}

function readGiven(input: AnyInput, matrix: Matrix | undefined): Given {
  if (!matrix && !input.optional) throw new Refusal('is missing', input.name);
  if (!matrix) {
    return { input, matrix, valueAt: (_row, _column, system) => defaultValue(input, system) };
  }
  const read = orLeftOut(input, readerOf(input));
  return {
    input,
    matrix,
    valueAt: rangeReader(input, matrix, read) ?? cellReader(matrix, read),
  };
}

function rangeReader(input: AnyInput, matrix: Matrix, read: CellReader): Given['valueAt'] | undefined {
  if (input.reading.as === 'list') return listReader(input, matrix);
  return input.reading.as === 'set' ? setReader(matrix, read) : undefined;
}

/** A drawer has empty places: a blank cell is no entry, wherever it stands. */
function setReader(matrix: Matrix, read: CellReader): Given['valueAt'] {
  return (_row, _column, system) => {
    const entries = matrix.flat().filter((cell) => !isBlank(typeof cell === 'string' ? cell.trim() : cell));
    if (entries.length === 0) throw new Refusal('holds no entries');
    return entries.map((cell) => read(cell, system));
  };
}

/** A blank cell, where the host can tell it from a zero, is an argument that was left out. */
const orLeftOut =
  (input: AnyInput, read: CellReader): CellReader =>
  (cell, system) => {
    if (cell !== null) return read(cell, system);
    if (!input.optional) throw new Refusal('is missing: its cell is blank');
    return defaultValue(input, system);
  };

function cellReader(matrix: Matrix, read: CellReader): Given['valueAt'] {
  let lastCell: CellValue | undefined;
  let lastSystem: System | undefined;
  let lastValue: unknown;
  return (row, column, system) => {
    const cell = cellAt(matrix, row, column);
    if (cell !== lastCell || system !== lastSystem) {
      lastValue = read(cell, system);
      lastCell = cell;
      lastSystem = system;
    }
    return lastValue;
  };
}

const isBlank = (cell: CellValue): boolean => cell === null || cell === '';

/** A list may be marked out with room to grow: blank cells at its end are no entries. One in its middle would shift it beside another list. */
function listReader(input: AnyInput, matrix: Matrix): Given['valueAt'] {
  const read = readerOf(input);
  return (_row, _column, system) => {
    const cells = matrix.flat();
    const last = cells.map(isBlank).lastIndexOf(false);
    const entries = cells.slice(0, last + 1);
    if (entries.length === 0 && input.optional) return defaultValue(input, system);
    if (entries.length === 0) throw new Refusal('holds no numbers');
    if (entries.some(isBlank))
      throw new Refusal('has a blank cell among its entries; fill it, or leave blanks at the end only');
    return entries.map((cell) => read(cell, system));
  };
}

function shapeOfCall(given: readonly Given[], units: Matrix | undefined): Shape {
  const shapes = given.flatMap(({ input, matrix }) =>
    matrix && !takesRange(input.reading) ? [{ name: input.name, shape: shapeOf(matrix) }] : [],
  );
  if (units) shapes.push({ name: 'units', shape: shapeOf(units) });
  const shape = commonShape(shapes);
  if (shape.rows * shape.columns > MOST_CELLS) {
    throw new Refusal(
      `The answer would be ${shape.rows} × ${shape.columns} cells; at most ${MOST_CELLS} are given at once.`,
    );
  }
  return shape;
}

/** An argument that was left out and follows another takes that one's value. */
function fillFollowers(given: readonly Given[], values: unknown[]): void {
  given.forEach(({ input }, i) => {
    if (values[i] !== undefined || input.sameAs === undefined) return;
    values[i] = values[given.findIndex((other) => other.input.name === input.sameAs)];
  });
}

/** A refusal of inputs that do not go together: says the values, in the units of the call. */
function withValues(
  refusal: Refusal,
  given: readonly Given[],
  values: readonly unknown[],
  system: System,
): Refusal {
  const valueText = (name: string): string => {
    const i = given.findIndex(({ input }) => input.name === name);
    const reading = given[i]?.input.reading;
    const value = values[i];
    if (reading?.as === 'quantity' && typeof value === 'number')
      return quantityText(value, reading.kind, system);
    return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
  };
  const message = refusal.message.replace(/\{(\w+)\}/g, (_, name: string) => {
    const step = refusal.steps[name];
    return step ? quantityText(step.value, step.gives, system) : `${name}, ${valueText(name)}`;
  });
  if (refusal.argument === undefined) return new Refusal(message, undefined, refusal.code);
  const own = valueText(refusal.argument);
  return new Refusal(
    own === '' || message.startsWith('is ') ? message : `is ${own}; it ${message}`,
    refusal.argument,
    refusal.code,
  );
}
