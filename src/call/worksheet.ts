import type { AnyInput, Answer, Definition } from '../core/define';
import { answer, givesOf } from '../core/evaluate';
import { quantityText } from '../core/format';
import { fromSI, systemUnit, type Kind, type System } from '../core/quantity';
import { Refusal } from '../core/refusal';
import { cellAt, commonShape, shapeOf, type Shape } from './broadcast';
import { CellError, type Argument, type CellValue, type Matrix } from './cell';
import { familyOf, parametersOf } from './describe';
import { defaultValue, PassedError, readerOf, readUnits, type CellReader } from './readArgument';
import type { WorksheetFunction } from './worksheetFunction';

/** Above this a worksheet is better served by several smaller calls; Excel itself struggles with larger arguments. */
const MOST_CELLS = 50_000;

/** One argument during a call. Equal neighbouring cells are read once: a fixed argument beside a long column costs nothing. */
interface Given {
  readonly input: AnyInput;
  readonly matrix: Matrix | undefined;
  readonly valueAt: (row: number, column: number, system: System) => unknown;
}

/** A definition as the worksheet sees it. */
export function worksheetFunction(definition: Definition): WorksheetFunction {
  const inputs = definition.inputs as readonly AnyInput[];
  const parameters = parametersOf(definition);

  const call = (args: readonly Argument[]): Matrix => {
    try {
      if (args.length > parameters.length) {
        throw new Refusal(
          `${definition.name} takes at most ${parameters.length} arguments; ${args.length} were given.`,
        );
      }
      const given = inputs.map((input, i) => readGiven(input, args[i] ?? undefined));
      const units = args[inputs.length] ?? undefined;
      const shape = shapeOfCall(given, units);
      return Array.from({ length: shape.rows }, (_, row) =>
        Array.from({ length: shape.columns }, (_, column) =>
          answerAt(definition, given, units, row, column, shape),
        ),
      ).map((cells) => cells.flat());
    } catch (error) {
      return [[errorCell(error)]];
    }
  };

  return {
    id: definition.name,
    family: familyOf(definition.name),
    summary: definition.summary,
    parameters,
    call,
  };
}

function readGiven(input: AnyInput, matrix: Matrix | undefined): Given {
  if (!matrix && !input.optional) throw new Refusal('is missing', input.name);
  if (!matrix) {
    return { input, matrix, valueAt: (_row, _column, system) => defaultValue(input, system) };
  }
  const read = readerOf(input);
  return {
    input,
    matrix,
    valueAt: input.reading.as === 'list' ? listReader(matrix, read) : cellReader(matrix, read),
  };
}

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

/** Blank cells of a range are no entries: a list may be marked out with room to grow. */
function listReader(matrix: Matrix, read: CellReader): Given['valueAt'] {
  return (_row, _column, system) => {
    const entries = matrix.flat().filter((cell) => cell !== null && cell !== '');
    if (entries.length === 0) throw new Refusal('holds no numbers');
    return entries.map((cell) => read(cell, system));
  };
}

function shapeOfCall(given: readonly Given[], units: Matrix | undefined): Shape {
  const shapes = given.flatMap(({ input, matrix }) =>
    matrix && input.reading.as !== 'list' ? [{ name: input.name, shape: shapeOf(matrix) }] : [],
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

/** The cells of one place of the common shape: one, or a row of several. */
function answerAt(
  definition: Definition,
  given: readonly Given[],
  units: Matrix | undefined,
  row: number,
  column: number,
  shape: Shape,
): CellValue[] {
  let system: System = 'in';
  try {
    if (units) system = about('units', () => readUnits(cellAt(units, row, column)));
    const values = given.map(({ input, valueAt }) => about(input.name, () => valueAt(row, column, system)));
    fillFollowers(given, values);
    try {
      return presentAnswer(definition, values, system, shape);
    } catch (error) {
      throw error instanceof Refusal ? withValues(error, given, values, system) : error;
    }
  } catch (error) {
    return [errorCell(error)];
  }
}

/** Puts the argument's name to a refusal that does not have one yet. */
function about<T>(argument: string, read: () => T): T {
  try {
    return read();
  } catch (error) {
    if (error instanceof Refusal && error.argument === undefined)
      throw new Refusal(error.message, argument, error.code);
    throw error;
  }
}

/** An argument that was left out and follows another takes that one's value. */
function fillFollowers(given: readonly Given[], values: unknown[]): void {
  given.forEach(({ input, matrix }, i) => {
    if (matrix || input.sameAs === undefined) return;
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
  const message = refusal.message.replace(/\{(\w+)\}/g, (_, name: string) => `${name}, ${valueText(name)}`);
  if (refusal.argument === undefined) return new Refusal(message, undefined, refusal.code);
  const own = valueText(refusal.argument);
  return new Refusal(
    own === '' || message.startsWith('is ') ? message : `is ${own}; it ${message}`,
    refusal.argument,
    refusal.code,
  );
}

function presentAnswer(
  definition: Definition,
  values: readonly unknown[],
  system: System,
  shape: Shape,
): CellValue[] {
  const result = answer(definition, values, system);
  const gives = givesOf(definition, values);
  if (typeof gives === 'string') return [presentOne(result, gives, system)];
  if (shape.columns > 1) {
    throw new Refusal(
      `${definition.name} answers in a row of ${gives.row.length}, so its arguments may be a column but not a row.`,
    );
  }
  return gives.row.map((part, i) =>
    presentOne((result as readonly (number | string)[])[i] ?? '', part.gives, system),
  );
}

function presentOne(result: Answer, gives: Kind | 'text', system: System): CellValue {
  if (typeof result !== 'number') return String(result);
  if (gives === 'text') return String(result);
  const value = fromSI(result, systemUnit(gives, system));
  if (!Number.isFinite(value)) throw new Refusal('The result is not a finite number with these inputs.');
  // Minus zero is a zero that prints oddly.
  return value === 0 ? 0 : value;
}

/** What a person reads in the cell's error: the argument, what it is, what is accepted. */
function errorCell(error: unknown): CellError {
  if (error instanceof PassedError) return error.cell;
  if (error instanceof Refusal) {
    const text = error.argument === undefined ? error.message : `${error.argument} ${error.message}`;
    return new CellError(error.code, text.endsWith('.') ? text : `${text}.`);
  }
  // A fault of ours must not end the worksheet's calculation; the tests see to it that none gets here.
  return new CellError(
    '#VALUE!',
    `Internal fault: ${error instanceof Error ? error.message : String(error)}`,
  );
}
