import { CellError, type CellValue } from '../../src/cells/value';
import { worksheetFunction } from '../../src/call/worksheet';
import type { Definition } from '../../src/core/define';

/** Calls a function as a cell would, one cell an argument (null: left out), and gives its one cell back. */
export function ask(definition: Definition, ...args: readonly CellValue[]): CellValue {
  const [row] = worksheetFunction(definition).call(args.map((arg) => (arg === null ? undefined : [[arg]])));
  return row?.[0] ?? null;
}

/** The same where a number is expected; an error's message fails the test. */
export function askNumber(definition: Definition, ...args: readonly CellValue[]): number {
  const cell = ask(definition, ...args);
  if (typeof cell === 'number') return cell;
  throw new Error(
    cell instanceof CellError ? `${cell.code} ${cell.message}` : `${String(cell)} is no number`,
  );
}
