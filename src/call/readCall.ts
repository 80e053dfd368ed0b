import { inputsOf, takesRange, type AnyInput, type Definition } from '../core/define';
import { quantityText } from '../core/format';
import type { System } from '../core/quantity';
import { naming, Refusal } from '../core/refusal';
import { cellAt, commonShape, shapeOf, type Shape } from './broadcast';
import type { Argument, CellValue, Matrix } from '../cells/value';
import { inPlaces } from './places';
import { defaultValue, readerOf, readUnits, type CellReader } from './readArgument';

/** The longest column that a worksheet has. */
const MOST_CELLS = 1_048_576;

/** One argument during a call. */
interface Given {
  readonly input: AnyInput;
  readonly matrix: Matrix | undefined;
  valueAt(row: number, column: number, system: System): unknown;
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
  /** The same into a place that is there already, so that a long column makes none for each of its cells. */
  readonly into: (values: unknown[], row: number, column: number) => System;
  /** Puts the values of this place into a refusal of inputs that do not go together. */
  readonly explain: (refusal: Refusal, place: Place) => Refusal;
}

/** Takes a call apart; refuses an answer of more cells than `mostCells`. */
export function readCall(
  definition: Definition,
  typed: readonly Argument[],
  mostCells = MOST_CELLS,
): ReadCall {
  const inputs = inputsOf(definition);
  // The units come after the inputs.
  const most = inputs.length + 1;
  if (typed.length > most) {
    throw new Refusal(`${definition.name} takes at most ${most} arguments; ${typed.length} were given.`);
  }
  const args = inPlaces(typed, inputs.length, itself);
  const given = inputs.map((input, i) => readGiven(input, args[i]));
  const followers = followersOf(definition);
  const units = args[inputs.length];
  let lastCell: CellValue | undefined;
  let lastSystem: System = 'in';
  const systemAt = (row: number, column: number): System => {
    if (!units) return 'in';
    const cell = cellAt(units, row, column);
    if (cell === lastCell) return lastSystem;
    lastSystem = naming('units', () => readUnits(cell));
    lastCell = cell;
    return lastSystem;
  };
  const into = (values: unknown[], row: number, column: number): System => {
    const system = systemAt(row, column);
    let i = 0;
    try {
      for (; i < given.length; i++) values[i] = (given[i] as Given).valueAt(row, column, system);
    } catch (error) {
      return naming((given[i] as Given).input.name, () => {
        throw error;
      });
    }
    for (const [follower, followed] of followers) values[follower] ??= values[followed];
    return system;
  };
  return {
    args,
    shape: shapeOfCall(given, units, mostCells),
    systemAt,
    into,
    at: (row, column) => {
      const values: unknown[] = [];
      return { system: into(values, row, column), values };
    },
    explain: (refusal, { values, system }) => withValues(refusal, given, values, system),
  };
}

const itself = (cells: Matrix): Matrix => cells;

type Follower = readonly [follower: number, followed: number];
const followers = new WeakMap<Definition, readonly Follower[]>();

/** Inputs that, left out, take the value of another one. */
function followersOf(definition: Definition): readonly Follower[] {
  let known = followers.get(definition);
  if (!known) {
    const inputs = inputsOf(definition);
    known = inputs.flatMap(({ sameAs }, i): Follower[] =>
      sameAs === undefined ? [] : [[i, inputs.findIndex(({ name }) => name === sameAs)]],
    );
    followers.set(definition, known);
  }
  return known;
}

function readGiven(input: AnyInput, matrix: Matrix | undefined): Given {
  if (matrix) {
    const read = orLeftOut(input);
    const range = rangeReader(input, matrix, read);
    return range ? { input, matrix, valueAt: range } : new CellByCell(input, matrix, read);
  }
  if (!input.optional) throw new Refusal('is missing', input.name);
  return new LeftOut(input);
}

class LeftOut implements Given {
  readonly matrix = undefined;

  constructor(readonly input: AnyInput) {}

  valueAt(_row: number, _column: number, system: System): unknown {
    return defaultValue(this.input, system);
  }
}

/** Equal neighbouring cells are read once: a fixed argument beside a long column costs nothing. */
class CellByCell implements Given {
  private lastCell: CellValue | undefined = undefined;
  private lastSystem: System | undefined = undefined;
  private lastValue: unknown = undefined;

  constructor(
    readonly input: AnyInput,
    readonly matrix: Matrix,
    private readonly read: CellReader,
  ) {}

  valueAt(row: number, column: number, system: System): unknown {
    const cell = cellAt(this.matrix, row, column);
    if (cell !== this.lastCell || system !== this.lastSystem) {
      this.lastValue = this.read(cell, system);
      this.lastCell = cell;
      this.lastSystem = system;
    }
    return this.lastValue;
  }
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

const withBlanks = new WeakMap<AnyInput, CellReader>();

/** A blank cell, where the host can tell it from a zero, is an argument that was left out. */
function orLeftOut(input: AnyInput): CellReader {
  let reader = withBlanks.get(input);
  if (!reader) {
    const read = readerOf(input);
    reader = (cell, system) => {
      if (cell !== null) return read(cell, system);
      if (!input.optional) throw new Refusal('is missing: its cell is blank');
      return defaultValue(input, system);
    };
    withBlanks.set(input, reader);
  }
  return reader;
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

const ONE: Shape = { rows: 1, columns: 1 };

const isOne = (matrix: Matrix | undefined): boolean =>
  matrix === undefined || (matrix.length === 1 && matrix[0]?.length === 1);

function shapeOfCall(given: readonly Given[], units: Matrix | undefined, mostCells: number): Shape {
  if (isOne(units) && given.every(({ matrix }) => isOne(matrix))) return ONE;
  const shapes = given.flatMap(({ input, matrix }) =>
    matrix && !takesRange(input.reading) ? [{ name: input.name, shape: shapeOf(matrix) }] : [],
  );
  if (units) shapes.push({ name: 'units', shape: shapeOf(units) });
  const shape = commonShape(shapes);
  if (shape.rows * shape.columns > mostCells) {
    throw new Refusal(
      `The answer would be ${shape.rows} × ${shape.columns} cells; at most ${mostCells} are given at once.`,
    );
  }
  return shape;
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
