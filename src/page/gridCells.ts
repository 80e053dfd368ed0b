import { extractPureTextFromCell } from '@univerjs/core';
import type { ICellData, Injector, Nullable, Styles, Worksheet } from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import type { CellValue } from '../cells/value';
import { CellError } from '../cells/value';
import { Spills } from '../workbook/engine/spills';
import { styleOfGrid } from '../workbook/engine/gridStyles';
import type { Refusals } from '../workbook/engine/refusals';
import { gridValue } from '../workbook/engine/values';
import type { Area } from '../cells/address';
import type { StyleDescription } from '../package/styleEditor';

/** What one cell of the grid holds, in the terms of the workbook model. */
export interface GridCell {
  readonly value: CellValue;
  /** Without leading `=`. */
  readonly formula?: string;
  /** The cells that the formula's array fills, when more than its own. */
  readonly spill?: Area;
  /** Part of another cell's array. */
  readonly spilled?: true;
  /** One of the opened workbook's by its index, or one that came about since; absent = none of its own. */
  readonly style?: number | StyleDescription;
}

/** What the grid keeps beside its cells. */
interface GridParts {
  readonly injector: Injector;
  readonly refusals: Refusals;
}

/** Reads one sheet of the workbook on show, as it stands at this moment. */
export class GridCells {
  private readonly formulas: FormulaDataModel;
  private readonly spills: Spills;
  private readonly styles: Styles;
  private readonly unitId: string;
  private readonly sheetId: string;

  constructor(
    private readonly grid: GridParts,
    private readonly sheet: Worksheet,
    styles: Styles,
  ) {
    this.formulas = grid.injector.get(FormulaDataModel);
    this.styles = styles;
    this.unitId = sheet.getUnitId();
    this.sheetId = sheet.getSheetId();
    this.spills = new Spills(this.formulas, this.unitId, this.sheetId);
  }

  /** The cell as a person sees it: typed, calculated or part of a spill; an error says why where one knows. */
  read(row: number, column: number): GridCell {
    const own = this.data(row, column);
    const formula = this.formula(row, column, own);
    const look = this.style(own);
    const style = look !== undefined && { style: look };
    if (formula !== undefined) {
      const spill = this.spill(row, column);
      return {
        value: this.explained(gridValue(own) ?? 0, row, column, row, column),
        formula,
        ...(spill && { spill }),
        ...style,
      };
    }
    const value = own ? typed(own) : null;
    if (value !== null) return { value, ...style };
    const spilled = gridValue(this.spilled()?.[row]?.[column]);
    const anchor = spilled instanceof CellError ? this.spills.anchorOf(row, column) : undefined;
    return {
      value: anchor ? this.explained(spilled, row, column, anchor.row, anchor.column) : spilled,
      ...(spilled !== null && { spilled: true }),
      ...style,
    };
  }

  /** Places that hold a value, a formula or a style of their own, or part of a spill. */
  places(): { row: number; column: number }[] {
    const found = new Map<string, { row: number; column: number }>();
    this.sheet.getCellMatrix().forValue((row, column, cell) => {
      if (cell) found.set(`${row} ${column}`, { row, column });
    });
    for (const [row, line] of Object.entries(this.spilled() ?? {})) {
      for (const column of Object.keys(line as object)) {
        found.set(`${row} ${column}`, { row: Number(row), column: Number(column) });
      }
    }
    return [...found.values()];
  }

  private data(row: number, column: number): Nullable<ICellData> {
    return this.sheet.getCellMatrix().getValue(row, column);
  }

  private formula(row: number, column: number, cell: Nullable<ICellData>): string | undefined {
    if (!cell?.f && !cell?.si) return undefined;
    // A copied formula is kept once, by the cells' offset from the first one.
    const text = this.formulas.getFormulaStringByCell(row, column, this.sheetId, this.unitId) ?? cell.f;
    return text?.replace(/^=/, '');
  }

  private style(cell: Nullable<ICellData>): number | StyleDescription | undefined {
    if (typeof cell?.s === 'string' && /^\d+$/.test(cell.s)) return Number(cell.s);
    const style = this.styles.getStyleByCell(cell);
    return style ? styleOfGrid(style) : undefined;
  }

  private spilled() {
    return this.formulas.getArrayFormulaCellData()[this.unitId]?.[this.sheetId];
  }

  private spill(row: number, column: number): Area | undefined {
    const value = gridValue(this.data(row, column));
    const isBlocked = value instanceof CellError && value.code === '#SPILL!';
    return isBlocked ? undefined : this.spills.from(row, column);
  }

  private explained(value: CellValue, row: number, column: number, top: number, left: number): CellValue {
    if (!(value instanceof CellError) || value.message) return value;
    const place = { unitId: this.unitId, sheetId: this.sheetId, row: top, column: left };
    return new CellError(value.code, this.grid.refusals.why(place, value, row - top, column - left));
  }
}

function typed(cell: ICellData): CellValue {
  return cell.p ? extractPureTextFromCell(cell) : gridValue(cell);
}
