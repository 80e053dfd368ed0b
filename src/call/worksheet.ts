import { changesOf, type Answer, type Definition } from '../core/define';
import { answer, givesOf } from '../core/answer';
import { fromSI, systemUnit, type Kind, type System } from '../core/quantity';
import { Refusal } from '../core/refusal';
import { CellError, type Argument, type CellValue, type Matrix } from '../cells/value';
import { wordsOf } from '../derive/words';
import { PassedError } from './readArgument';
import { readCall, type Place, type ReadCall } from './readCall';
import type { WorksheetFunction } from './worksheetFunction';

/** A definition under each of its names. */
export function worksheetFunctionsOf(definition: Definition): WorksheetFunction[] {
  const { name, aliases = [] } = definition;
  const own = worksheetFunction(definition);
  return [own, ...aliases.map((id): WorksheetFunction => ({ ...own, id, aliasOf: name }))];
}

/** A definition as the worksheet sees it. */
export function worksheetFunction(definition: Definition): WorksheetFunction {
  // Not spread, which would make all words at once.
  return Object.assign(wordsOf(definition), {
    changes: changesOf(definition),
    call: (args: readonly Argument[]) => callDefinition(definition, args),
  });
}

/** Answers for every place of the arguments' common shape; a refusal stands in the place that it concerns. */
export function callDefinition(definition: Definition, args: readonly Argument[]): Matrix {
  try {
    const call = readCall(definition, args);
    const { rows, columns } = call.shape;
    return Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (__, column) => answerAt(definition, call, row, column)).flat(),
    );
  } catch (error) {
    return [[errorCell(error)]];
  }
}

/** The cells of one place: one, or a row of several. */
function answerAt(definition: Definition, call: ReadCall, row: number, column: number): CellValue[] {
  let place: Place | undefined;
  try {
    place = call.at(row, column);
    return presentAnswer(definition, place, call.shape.columns);
  } catch (error) {
    return [errorCell(place && error instanceof Refusal ? call.explain(error, place) : error)];
  }
}

function presentAnswer(definition: Definition, { values, system }: Place, columns: number): CellValue[] {
  const result = answer(definition, values, system);
  const gives = givesOf(definition, values);
  if (typeof gives === 'string') return [present(result, gives, system)];
  if (columns > 1) {
    throw new Refusal(
      `${definition.name} answers in a row of ${gives.row.length}, so its arguments may be a column but not a row.`,
    );
  }
  return gives.row.map((part, i) =>
    present((result as readonly (number | string)[])[i] ?? '', part.gives, system),
  );
}

/** One value as its cell: in the unit of the system, finite. */
export function present(result: Answer, gives: Kind | 'text', system: System): number | string {
  if (typeof result !== 'number' || gives === 'text') return String(result);
  const value = fromSI(result, systemUnit(gives, system));
  if (!Number.isFinite(value)) throw new Refusal('The result is not a finite number with these inputs.');
  // Minus zero is a zero that prints oddly.
  return value === 0 ? 0 : value;
}

/** What a person reads in the cell's error: the argument, what it is, what is accepted. */
export function errorCell(error: unknown): CellError {
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
