import { inputsOf, takesRange, type AnyInput, type Definition } from '../../core/define';
import { naming, Refusal } from '../../core/refusal';
import type { Argument, CellValue, Matrix } from '../../cells/value';
import { inputIndex } from '../findDefinition';

/** One row of a tool's `inputs`: an argument of the function, and what stands beside its name. */
export interface InputRow {
  readonly index: number;
  readonly input: AnyInput;
  readonly cells: readonly CellValue[];
}

/** Reads a range whose first column names arguments. Blank rows are passed over: a range may have room to grow. */
export function readInputs(definition: Definition, range: Matrix, columns: number): InputRow[] {
  return naming('inputs', () => {
    const rows = range.filter(([name]) => name !== null && name !== '' && name !== undefined);
    if (rows.length === 0) throw new Refusal('is empty');
    return rows.map(([name, ...cells]): InputRow => {
      if (cells.length !== columns - 1)
        throw new Refusal(`has ${cells.length + 1} columns; it takes ${columns}`);
      const index = inputIndex(definition, String(name));
      return { index, input: inputsOf(definition)[index] as AnyInput, cells };
    });
  });
}

/** Whether an input takes a range as one list or set, so that no single value can stand for it. */
export const isRange = (definition: Definition, index: number): boolean => {
  const input = inputsOf(definition)[index];
  return input !== undefined && takesRange(input.reading);
};

/** The arguments of a call with one cell taken from each row; rows of the same argument make a list. */
export function argumentsFrom(
  definition: Definition,
  rows: readonly InputRow[],
  take: (row: InputRow) => CellValue,
  units: string,
): Argument[] {
  const inputs = inputsOf(definition);
  const args = inputs.map((input, index): Argument => {
    const own = rows.filter((row) => row.index === index);
    if (own.length > 1 && !takesRange(input.reading))
      throw new Refusal(`names ${input.name} more than once`, 'inputs');
    return own.length === 0 ? undefined : own.map((row) => [take(row)]);
  });
  return [...args, [[units]]];
}
