import type { IColumnData, IRange, IRowData, Nullable, Worksheet } from '@univerjs/core';
import { BooleanNumber } from '@univerjs/core';
import { columnCharacters, rowPoints } from '../package/pixels';
import { areaAddress, cellAddress, columnLetters } from '../cells/address';
import type { CellDescription, SheetDescription, SheetsDescription } from '../package/description';
import type { StyleDescription } from '../package/styleEditor';
import type { GridCells } from './gridCells';

/** A sheet that was added in the grid. */
export interface AddedSheet {
  readonly sheet: Worksheet;
  readonly cells: GridCells;
}

/** The added sheets as the workbook's file takes them. */
export function describeSheets(
  added: readonly AddedSheet[],
  openedStyle: (index: number) => StyleDescription | undefined,
): SheetsDescription {
  const styles: Record<string, StyleDescription> = {};
  const nameOf = (style: number | StyleDescription | undefined): string | undefined => {
    const described = typeof style === 'number' ? openedStyle(style) : style;
    if (described === undefined) return undefined;
    const name = JSON.stringify(described);
    styles[name] = described;
    return name;
  };
  return { sheets: added.map((one) => describeSheet(one, nameOf)), styles };
}

function describeSheet(
  { sheet, cells }: AddedSheet,
  nameOf: (style: number | StyleDescription | undefined) => string | undefined,
): SheetDescription {
  const config = sheet.getConfig();
  const described: Record<string, CellDescription> = {};
  for (const { row, column } of cells.places()) {
    const { value, formula, spill, style } = cells.read(row, column);
    const name = nameOf(style);
    described[cellAddress(row, column)] = {
      value,
      ...(formula !== undefined && { formula }),
      ...(spill && { fills: areaAddress(spill) }),
      ...(name !== undefined && { style: name }),
    };
  }
  const { xSplit, ySplit } = config.freeze;
  return {
    name: sheet.getName(),
    gridlines: config.showGridlines === BooleanNumber.TRUE,
    columns: Object.fromEntries(
      entries<IColumnData>(config.columnData).flatMap(([column, data]) =>
        data?.w === undefined ? [] : [[columnLetters(Number(column)), columnCharacters(data.w)]],
      ),
    ),
    rows: Object.fromEntries(
      entries<IRowData>(config.rowData).flatMap(([row, data]) =>
        data?.h === undefined || data.ia === BooleanNumber.TRUE ? [] : [[Number(row) + 1, rowPoints(data.h)]],
      ),
    ),
    merges: config.mergeData.map((merged: IRange) =>
      areaAddress({
        top: merged.startRow,
        left: merged.startColumn,
        bottom: merged.endRow,
        right: merged.endColumn,
      }),
    ),
    ...(xSplit + ySplit > 0 && { freeze: cellAddress(ySplit, xSplit) }),
    cells: described,
  };
}

const entries = <T>(data: object) => Object.entries(data as Record<string, Nullable<T>>);
