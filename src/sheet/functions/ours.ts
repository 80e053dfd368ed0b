import { NAMESPACE } from '../../cells/namespace';
import { CellError, type Matrix } from '../../cells/value';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { ArrayValue, type Value } from '../values';
import { plain, type SheetFunction } from './spec';

/** One of our functions as any other; it lifts, reads text and refuses by itself. */
export function ourFunction(one: WorksheetFunction): SheetFunction {
  const name = `${NAMESPACE}.${one.id}`;
  const call = (...args: Parameters<WorksheetFunction['call']>[0]): Value => {
    try {
      return valueOf(one.call(args));
    } catch (error) {
      const said = error instanceof Error ? error.message : String(error);
      return new CellError('#VALUE!', `${name} failed: ${said}`);
    }
  };
  return { ...plain(name, '(m)*', call), isOurs: true };
}

function valueOf(matrix: Matrix): Value {
  if (matrix.length === 1 && matrix[0]?.length === 1) return matrix[0][0] ?? null;
  return ArrayValue.of(matrix);
}
