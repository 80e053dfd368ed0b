import { BaseFunction, ErrorType, ErrorValueObject } from '@univerjs/engine-formula';
import type { BaseReferenceObject, BaseValueObject } from '@univerjs/engine-formula';
import type { IRange } from '@univerjs/core';

/** Spilled ranges by unit, sheet, row and column. */
type Spills = Record<string, Record<string, Record<number, Record<number, IRange>>> | undefined> | undefined;

/** The reference keeps where formulas spilled, in this calculation and before it; it has no accessor for it. */
interface Spilled {
  readonly _runtimeArrayFormulaRange: Spills;
  readonly _arrayFormulaRange: Spills;
}

/** `ANCHORARRAY(B4)`, written `B4#`: the whole range that the formula in B4 spills into. */
export class Anchor extends BaseFunction {
  override needsReferenceObject = true;
  override minParams = 1;
  override maxParams = 1;

  override calculate(cell: BaseValueObject): BaseValueObject {
    if (cell.isError()) return cell;
    if (!cell.isReferenceObject()) return ErrorValueObject.create(ErrorType.REF);
    const reference = cell as unknown as BaseReferenceObject;
    const { _runtimeArrayFormulaRange: now, _arrayFormulaRange: before } = cell as unknown as Spilled;
    const { startRow, startColumn } = reference.getRangePosition();
    const find = (spills: Spills): IRange | undefined =>
      spills?.[reference.getUnitId()]?.[reference.getSheetId()]?.[startRow]?.[startColumn];
    const spill = find(now) ?? find(before);
    if (!spill) return ErrorValueObject.create(ErrorType.REF);
    const range = reference.getRangeData();
    range.endRow = spill.endRow;
    range.endColumn = spill.endColumn;
    return reference.toArrayValueObject();
  }
}
