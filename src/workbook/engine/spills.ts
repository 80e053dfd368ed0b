import type { FormulaDataModel } from '@univerjs/engine-formula';
import type { IRange } from '@univerjs/core';
import type { Area } from '../../cells/address';

/** Which cells formulas spill over, on one sheet of the grid. */
export class Spills {
  constructor(
    private readonly formulas: FormulaDataModel,
    private readonly unitId: string,
    private readonly sheetId: string,
  ) {}

  /** The cells that the formula in this cell fills, when more than its own. A blocked one still has its area. */
  from(row: number, column: number): Area | undefined {
    const range = this.ranges[row]?.[column];
    return range && isMany(range) ? areaOf(range) : undefined;
  }

  /** The cell whose formula spills over this one, itself included. */
  anchorOf(row: number, column: number): { row: number; column: number } | undefined {
    for (const [top, line] of Object.entries(this.ranges)) {
      for (const [left, range] of Object.entries(line)) {
        const { startRow, endRow, startColumn, endColumn } = range;
        if (row < startRow || row > endRow || column < startColumn || column > endColumn) continue;
        return { row: Number(top), column: Number(left) };
      }
    }
    return undefined;
  }

  private get ranges(): Record<string, Record<string, IRange>> {
    const ranges = this.formulas.getArrayFormulaRange()[this.unitId]?.[this.sheetId];
    return (ranges ?? {}) as Record<string, Record<string, IRange>>;
  }
}

function isMany({ startRow, endRow, startColumn, endColumn }: IRange): boolean {
  return startRow !== endRow || startColumn !== endColumn;
}

function areaOf({ startRow, endRow, startColumn, endColumn }: IRange): Area {
  return { top: startRow, left: startColumn, bottom: endRow, right: endColumn };
}
