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
  systemAt(row: number, column: number): System;
  at(row: number, column: number): Place;
  /** The same into a place that is there already, so that a long column makes none for each of its cells. */
  into(values: unknown[], row: number, column: number): System;
  /** Puts the values of this place into a refusal of inputs that do not go together. */
  explain(refusal: Refusal, place: Place): Refusal;
}

/** Takes a call apart; refuses an answer of more cells than `mostCells`. */
export function readCall(
  definition: Definition,
  typed: readonly Argument[],
  mostCells = MOST_CELLS,
): ReadCall {
  const { readers, followers } = readingOf(definition);
  // The units come after the inputs.
  const most = readers.length + 1;
  if (typed.length > most) {
    throw new Refusal(`${definition.name} takes at most ${most} arguments; ${typed.length} were given.`);
  }
  const args = inPlaces(typed, readers.length, itself);
  for (let i = 0; i < readers.length; i++) {
    const { input } = readers[i] as ArgumentReader;
    if (!args[i] && !input.optional) throw new Refusal('is missing', input.name);
  }
  return new OneCall(readers, followers, args, shapeOfCall(readers, args, mostCells));
}

const itself = (cells: Matrix): Matrix => cells;

/** Inputs that, left out, take the value of another one. */
type Follower = readonly [follower: number, followed: number];

interface CallReading {
  readonly readers: readonly ArgumentReader[];
  readonly followers: readonly Follower[];
}

const readings = new WeakMap<Definition, CallReading>();

/** What the calls of a definition are read with; made once, so that a call makes little. */
function readingOf(definition: Definition): CallReading {
  let known = readings.get(definition);
  if (!known) {
    const inputs = inputsOf(definition);
    known = {
      readers: inputs.map((input) => new ArgumentReader(input)),
      followers: inputs.flatMap(({ sameAs }, i): Follower[] =>
        sameAs === undefined ? [] : [[i, inputs.findIndex(({ name }) => name === sameAs)]],
      ),
    };
    readings.set(definition, known);
  }
  return known;
}

class ArgumentReader {
  readonly range: ((matrix: Matrix, system: System) => unknown) | undefined;
  private readonly readCell: CellReader;

  constructor(readonly input: AnyInput) {
    this.readCell = readerOf(input);
    const { as } = input.reading;
    if (as === 'list') this.range = listReader(input, this.readCell);
    if (as === 'set') this.range = setReader((cell, system) => this.read(cell, system));
  }

  /** A blank cell, where the host can tell it from a zero, is an argument that was left out. */
  read(cell: CellValue, system: System): unknown {
    if (cell !== null) return this.readCell(cell, system);
    if (!this.input.optional) throw new Refusal('is missing: its cell is blank');
    return defaultValue(this.input, system);
  }
}

/** Equal neighbouring cells are read once: a fixed argument beside a long column costs nothing. */
interface Before {
  readonly cells: CellValue[];
  readonly systems: System[];
  readonly values: unknown[];
}

class OneCall implements ReadCall {
  private lastUnits: CellValue | undefined = undefined;
  private lastSystem: System = 'in';
  private readonly before: Before | undefined;

  constructor(
    private readonly readers: readonly ArgumentReader[],
    private readonly followers: readonly Follower[],
    readonly args: readonly (Matrix | undefined)[],
    readonly shape: Shape,
  ) {
    this.before = shape === ONE ? undefined : { cells: [], systems: [], values: [] };
  }

  systemAt(row: number, column: number): System {
    const units = this.args[this.readers.length];
    if (!units) return 'in';
    const cell = cellAt(units, row, column);
    if (cell === this.lastUnits) return this.lastSystem;
    this.lastSystem = naming('units', () => readUnits(cell));
    this.lastUnits = cell;
    return this.lastSystem;
  }

  into(values: unknown[], row: number, column: number): System {
    const system = this.systemAt(row, column);
    const { readers, followers } = this;
    let i = 0;
    try {
      for (; i < readers.length; i++) values[i] = this.valueAt(i, row, column, system);
    } catch (error) {
      return naming((readers[i] as ArgumentReader).input.name, () => {
        throw error;
      });
    }
    for (const [follower, followed] of followers) values[follower] ??= values[followed];
    return system;
  }

  at(row: number, column: number): Place {
    const values: unknown[] = [];
    return { system: this.into(values, row, column), values };
  }

  explain(refusal: Refusal, { values, system }: Place): Refusal {
    return withValues(
      refusal,
      this.readers.map(({ input }) => input),
      values,
      system,
    );
  }

  private valueAt(i: number, row: number, column: number, system: System): unknown {
    const reader = this.readers[i] as ArgumentReader;
    const matrix = this.args[i];
    if (!matrix) return defaultValue(reader.input, system);
    if (reader.range) return reader.range(matrix, system);
    const cell = cellAt(matrix, row, column);
    const { before } = this;
    if (!before) return reader.read(cell, system);
    if (cell !== before.cells[i] || system !== before.systems[i]) {
      before.values[i] = reader.read(cell, system);
      before.cells[i] = cell;
      before.systems[i] = system;
    }
    return before.values[i];
  }
}

/** A drawer has empty places: a blank cell is no entry, wherever it stands. */
const setReader =
  (read: CellReader) =>
  (matrix: Matrix, system: System): unknown => {
    const entries = matrix.flat().filter((cell) => !isBlank(typeof cell === 'string' ? cell.trim() : cell));
    if (entries.length === 0) throw new Refusal('holds no entries');
    return entries.map((cell) => read(cell, system));
  };

const isBlank = (cell: CellValue): boolean => cell === null || cell === '';

/** A list may be marked out with room to grow: blank cells at its end are no entries. One in its middle would shift it beside another list. */
const listReader =
  (input: AnyInput, read: CellReader) =>
  (matrix: Matrix, system: System): unknown => {
    const cells = matrix.flat();
    const last = cells.map(isBlank).lastIndexOf(false);
    const entries = cells.slice(0, last + 1);
    if (entries.length === 0 && input.optional) return defaultValue(input, system);
    if (entries.length === 0) throw new Refusal('holds no numbers');
    if (entries.some(isBlank))
      throw new Refusal('has a blank cell among its entries; fill it, or leave blanks at the end only');
    return entries.map((cell) => read(cell, system));
  };

const ONE: Shape = { rows: 1, columns: 1 };

const isOne = (matrix: Matrix | undefined): boolean =>
  matrix === undefined || (matrix.length === 1 && matrix[0]?.length === 1);

function shapeOfCall(
  readers: readonly ArgumentReader[],
  args: readonly (Matrix | undefined)[],
  mostCells: number,
): Shape {
  if (args.every(isOne)) return ONE;
  const shapes = args.flatMap((matrix, i) => {
    const input = readers[i]?.input;
    return matrix && !(input && takesRange(input.reading))
      ? [{ name: input?.name ?? 'units', shape: shapeOf(matrix) }]
      : [];
  });
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
  inputs: readonly AnyInput[],
  values: readonly unknown[],
  system: System,
): Refusal {
  const valueText = (name: string): string => {
    const i = inputs.findIndex((input) => input.name === name);
    const reading = inputs[i]?.reading;
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
