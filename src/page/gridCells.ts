import { extractPureTextFromCell } from '@univerjs/core';
import type { ICellData, Injector, Nullable, Styles, Worksheet } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import type { Area } from '../cells/address';
import type { CellValue } from '../cells/value';
import type { StyleDescription } from '../package/styleEditor';
import { eachPlace } from '../sheet/graph/dependents';
import type { GridCalculation } from './calculation';
import { gridValue } from './gridData';
import { styleOfGrid } from './gridStyles';

/** What one cell of the grid holds, in the terms of the workbook model. */
export interface GridCell {
  readonly value: CellValue;
  /** Without leading `=`. */
  readonly formula?: string;
  /** The cells that the formula's array fills, when more than its own. */
  readonly spill?: Area;
  /** Part of another cell's array. */
  readonly spilled?: true;
  /** Its formula was not calculated yet, or not to the end. */
  readonly isUnreached?: true;
  /** One of the opened workbook's by its index, or one that came about since; absent = none of its own. */
  readonly style?: number | StyleDescription;
}

/** What the grid keeps beside its cells. */
interface GridParts {
  readonly injector: Injector;
  readonly calculation: GridCalculation;
}

/** Reads one sheet of the workbook on show, as it stands at this moment. */
export class GridCells {
  private readonly formulas: FormulaDataModel;
  private readonly styles: Styles;

  constructor(
    private readonly grid: GridParts,
    private readonly sheet: Worksheet,
    /** Its place in the calculation. */
    private readonly index: number,
    styles: Styles,
  ) {
    this.formulas = grid.injector.get(FormulaDataModel);
    this.styles = styles;
  }

  /** The cell as a person sees it: typed, calculated or part of a spill; an error says why. */
  read(row: number, column: number): GridCell {
    const { value, formula } = this.typed(row, column);
    const look = this.style(this.data(row, column));
    const style = look !== undefined && { style: look };
    const { calculation } = this.grid;
    const place = { sheet: this.index, row, column };
    if (formula !== undefined) {
      const spill = calculation.spill(place);
      return {
        value: calculation.value(place) ?? 0,
        formula,
        ...(spill && { spill }),
        ...(calculation.isUnreached(place) && { isUnreached: true as const }),
        ...style,
      };
    }
    if (value !== null) return { value, ...style };
    const spilled = calculation.value(place);
    return { value: spilled, ...(spilled !== null && { spilled: true }), ...style };
  }

  /** What was typed into the cell. */
  typed(row: number, column: number): { readonly value: CellValue; readonly formula?: string } {
    const own = this.data(row, column);
    const formula = this.formula(row, column, own);
    if (formula !== undefined) return { value: gridValue(own), formula };
    return { value: own?.p ? extractPureTextFromCell(own) : gridValue(own) };
  }

  /** Why the value of the file stands in the cell, where its formula could not be calculated. */
  keptReason(row: number, column: number): string | undefined {
    return this.grid.calculation.keptReason({ sheet: this.index, row, column });
  }

  /** Places that hold a value, a formula or a style of their own, or part of a spill. */
  places(): { row: number; column: number }[] {
    const found = new Map<string, { row: number; column: number }>();
    this.sheet.getCellMatrix().forValue((row, column, cell) => {
      if (cell) found.set(`${row} ${column}`, { row, column });
    });
    for (const { sheet, area } of this.grid.calculation.spills()) {
      if (sheet !== this.index) continue;
      eachPlace(area, (row, column) => found.set(`${row} ${column}`, { row, column }));
    }
    return [...found.values()];
  }

  formulaPlaces(): { row: number; column: number }[] {
    const found: { row: number; column: number }[] = [];
    this.sheet.getCellMatrix().forValue((row, column, cell) => {
      if (cell?.f || cell?.si) found.push({ row, column });
    });
    return found;
  }

  data(row: number, column: number): Nullable<ICellData> {
    return this.sheet.getCellMatrix().getValue(row, column);
  }

  private formula(row: number, column: number, cell: Nullable<ICellData>): string | undefined {
    if (!cell?.f && !cell?.si) return undefined;
    // A copied formula is kept once, by the cells' offset from the first one.
    const text =
      this.formulas.getFormulaStringByCell(row, column, this.sheet.getSheetId(), this.sheet.getUnitId()) ??
      cell.f;
    return text?.replace(/^=/, '');
  }

  private style(cell: Nullable<ICellData>): number | StyleDescription | undefined {
    if (typeof cell?.s === 'string' && /^\d+$/.test(cell.s)) return Number(cell.s);
    const style = this.styles.getStyleByCell(cell);
    return style ? styleOfGrid(style) : undefined;
  }
}
