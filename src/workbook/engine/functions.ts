import { BaseFunction } from '@univerjs/engine-formula';
import type { BaseValueObject } from '@univerjs/engine-formula';
import type { Matrix } from '../../cells/value';
import { CellError } from '../../cells/value';
import { NAMESPACE } from '../../cells/namespace';
import type { WorksheetFunction } from '../../call/worksheetFunction';
import { Anchor } from './anchor';
import type { Refusals } from './refusals';
import { argumentOf, resultOf } from './values';

/** A function's class and name, as the engine's plugin and the grid's preset take them (`formula.function`). */
export type EngineFunction = [typeof BaseFunction, string];

/** Every function under its worksheet name, and the spill operator; what they refuse goes to `refusals`. */
export function engineFunctions(
  functions: readonly WorksheetFunction[],
  refusals: Refusals,
): EngineFunction[] {
  return [
    [Anchor, 'ANCHORARRAY'],
    ...functions.map((fn): EngineFunction => [adapt(fn, refusals), `${NAMESPACE}.${fn.id}`]),
  ];
}

function adapt(fn: WorksheetFunction, refusals: Refusals): typeof BaseFunction {
  return class extends BaseFunction {
    // Any number: the engine's own count check answers with a bare #N/A, the function says what is missing.
    override minParams = 0;
    override maxParams = 255;

    /** Text in quotes stays text: the engine would make a date of "1/2" and 0.75 of "75 %". */
    override isArgumentsIgnoreNumberPattern(): boolean {
      return true;
    }

    override calculate(...values: BaseValueObject[]): BaseValueObject {
      const answer = answerOf(fn, values);
      refusals.note(
        { unitId: this.unitId ?? '', sheetId: this.subUnitId ?? '', row: this.row, column: this.column },
        answer,
      );
      return resultOf(answer);
    }
  };
}

/** An exception would stop the whole calculation for good, so even a fault of ours becomes a cell in error. */
function answerOf(fn: WorksheetFunction, values: readonly BaseValueObject[]): Matrix {
  try {
    return fn.call(values.map(argumentOf));
  } catch (fault) {
    const said = fault instanceof Error ? fault.message : String(fault);
    return [[new CellError('#VALUE!', `${NAMESPACE}.${fn.id} failed, which is a fault in it: ${said}`)]];
  }
}
