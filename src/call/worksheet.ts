import { changesOf, type Answer, type Definition } from '../core/define';
import { givesOf, runnerOf } from '../core/answer';
import { fromSI, systemUnit, type Kind, type System } from '../core/quantity';
import { Refusal } from '../core/refusal';
import { CellError, type Argument, type CellValue, type Matrix } from '../cells/value';
import { wordsOf } from '../derive/words';
import { PassedError } from './readArgument';
import { readCall, type ReadCall } from './readCall';
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

/**
 * Answers for every place of the arguments' common shape; a refusal stands in the place that it concerns. A host that
 * passes fewer cells than a worksheet has says how many.
 */
export function callDefinition(
  definition: Definition,
  args: readonly Argument[],
  mostCells?: number,
): Matrix {
  try {
    const call = readCall(definition, args, mostCells);
    const { rows, columns } = call.shape;
    const answerAt = cellAnswerer(definition, call);
    const answer: CellValue[][] = [];
    for (let row = 0; row < rows; row++) {
      const line = answerAt(row, 0);
      for (let column = 1; column < columns; column++) line.push(...answerAt(row, column));
      answer.push(line);
    }
    return answer;
  } catch (error) {
    return [[errorCell(error)]];
  }
}

/** Answers place by place with the cells of one: a single one, or a row of several. */
function cellAnswerer(definition: Definition, call: ReadCall): (row: number, column: number) => CellValue[] {
  const run = runnerOf(definition);
  // Of all places the same, so that a long column leaves nothing behind but its answers.
  const values: unknown[] = [];
  const several = call.shape.columns > 1;
  return (row, column) => {
    let system: System | undefined;
    try {
      system = call.into(values, row, column);
      const result = run(values, system);
      const gives = givesOf(definition, values);
      return typeof gives === 'string'
        ? [present(result, gives, system)]
        : presentRow(definition, result, gives.row, system, several);
    } catch (error) {
      return [
        errorCell(system && error instanceof Refusal ? call.explain(error, { values, system }) : error),
      ];
    }
  };
}

function presentRow(
  { name }: Definition,
  result: Answer,
  parts: readonly { readonly gives: Kind }[],
  system: System,
  several: boolean,
): CellValue[] {
  if (several) {
    throw new Refusal(
      `${name} answers in a row of ${parts.length}, so its arguments may be a column but not a row.`,
    );
  }
  return parts.map(({ gives }, i) =>
    present((result as readonly (number | string)[])[i] ?? '', gives, system),
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
