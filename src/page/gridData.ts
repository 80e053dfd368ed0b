import { BooleanNumber, CellValueType, LocaleType } from '@univerjs/core';
import type { ICellData, IRange, IWorkbookData, IWorksheetData, Nullable } from '@univerjs/core';
import { CellError, type CellValue, type ErrorCode } from '../cells/value';
import { areaContains, MAX_COLUMNS, MAX_ROWS } from '../cells/address';
import type { Area } from '../cells/address';
import { ERRORS } from '../sheet/values';
import type { Cell, DefinedName, Sheet, Table, Workbook } from '../package/model';
import { columnPixels, rowPixels } from '../package/pixels';
import { gridStyle } from './gridStyles';

/** Room below and right of what is filled: to type on, and for results to spill into. */
const SPARE_ROWS = 200;
const SPARE_COLUMNS = 12;
const LEAST_ROWS = 1000;
const LEAST_COLUMNS = 26;

/** Marks a name that every sheet knows. */
const WHOLE_WORKBOOK = 'AllDefaultWorkbook';

/** The grid's id of a sheet; lasts as long as the grid has the workbook, whatever the sheet is called. */
export function sheetId(index: number): string {
  return `sheet-${index + 1}`;
}

/** A workbook as the grid and the engine take it. */
export function gridData(workbook: Workbook, id: string): IWorkbookData {
  const ids = workbook.sheets.map((_, index) => sheetId(index));
  return {
    id,
    name: '',
    appVersion: '0.25.1',
    locale: LocaleType.EN_US,
    styles: Object.fromEntries(workbook.styles.map((style, index) => [String(index), gridStyle(style)])),
    sheetOrder: ids,
    sheets: Object.fromEntries(
      workbook.sheets.map((sheet, index) => [sheetId(index), gridSheet(sheet, index)]),
    ),
    resources: [
      { name: 'SHEET_DEFINED_NAME_PLUGIN', data: JSON.stringify(gridNames(workbook)) },
      { name: 'SHEET_TABLE_PLUGIN', data: JSON.stringify(gridTables(workbook)) },
    ],
  };
}

export function gridSheet(sheet: Sheet, index: number) {
  const { rows: frozenRows, columns: frozenColumns } = sheet.frozen;
  const hidden = (is: boolean) => (is ? { hd: BooleanNumber.TRUE } : {});
  return {
    id: sheetId(index),
    name: sheet.name,
    ...(sheet.tabColor !== undefined && { tabColor: sheet.tabColor }),
    hidden: sheet.state === 'visible' ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    ...gridSize(sheet),
    showGridlines: sheet.showsGridlines ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    defaultColumnWidth: columnPixels(sheet.defaultColumnWidth),
    defaultRowHeight: rowPixels(sheet.defaultRowHeight),
    freeze: {
      xSplit: frozenColumns,
      ySplit: frozenRows,
      startRow: frozenRows || -1,
      startColumn: frozenColumns || -1,
    },
    mergeData: sheet.merges.map((merge) => gridRange(shownMerge(sheet, merge))),
    rowData: Object.fromEntries(
      sheet.rows.map((row) => [
        row.row,
        {
          ...(row.height !== undefined && { h: rowPixels(row.height), ia: BooleanNumber.FALSE }),
          ...(row.style !== undefined && { s: String(row.style) }),
          ...hidden(row.hidden),
        },
      ]),
    ),
    columnData: gridColumns(sheet),
    cellData: gridCells(sheet),
  };
}

/** Merged cells that the grid keeps one by one. */
const MOST_MERGED = 100_000;

/** The part of merged cells that the grid shows: it keeps every cell of them, and a merge may take in the whole sheet. */
export function shownMerge(sheet: Sheet, merge: Area): Area {
  const { rowCount, columnCount } = gridSize(sheet);
  const right = Math.min(merge.right, Math.max(columnCount - 1, merge.left));
  const rows = Math.max(1, Math.floor(MOST_MERGED / (right - merge.left + 1)));
  const bottom = Math.min(merge.bottom, Math.max(rowCount - 1, merge.top), merge.top + rows - 1);
  return { ...merge, bottom, right };
}

/** How far the sheet reaches in the grid. */
function gridSize(sheet: Sheet): { rowCount: number; columnCount: number } {
  let bottom = 0;
  let right = 0;
  for (const { row, column } of sheet.cells) {
    bottom = Math.max(bottom, row + 1);
    right = Math.max(right, column + 1);
  }
  return {
    rowCount: Math.min(MAX_ROWS, Math.max(LEAST_ROWS, bottom + SPARE_ROWS)),
    columnCount: Math.min(MAX_COLUMNS, Math.max(LEAST_COLUMNS, right + SPARE_COLUMNS)),
  };
}

function gridColumns(sheet: Sheet): NonNullable<IWorksheetData['columnData']> {
  const columns: IWorksheetData['columnData'] = {};
  // A run may reach to the last column of the format; the grid ends long before it.
  const { columnCount } = gridSize(sheet);
  for (const { first, last, width, style, hidden } of sheet.columns) {
    for (let column = first; column <= Math.min(last, columnCount - 1); column++) {
      columns[column] = {
        ...(width !== undefined && { w: columnPixels(width) }),
        ...(style !== 0 && { s: String(style) }),
        ...(hidden && { hd: BooleanNumber.TRUE }),
      };
    }
  }
  return columns;
}

function gridCells(sheet: Sheet): IWorksheetData['cellData'] {
  const cells: IWorksheetData['cellData'] = {};
  const spilled = spilledPlaces(sheet);
  for (const cell of sheet.cells) {
    const line = (cells[cell.row] ??= {});
    // What spilled is the engine's to write; as a value of the cell it would block the spill.
    const blank = cell.formula === undefined && spilled.has(cell.row * MAX_COLUMNS + cell.column);
    line[cell.column] = blank ? { s: String(cell.style) } : gridCell(cell);
  }
  return cells;
}

/** The places that hold part of another cell's result. */
function spilledPlaces(sheet: Sheet): Set<number> {
  const places = new Set<number>();
  for (const { spill } of sheet.cells) {
    if (!spill) continue;
    // An area may take in the whole sheet, of which the file has few cells.
    if ((spill.bottom - spill.top + 1) * (spill.right - spill.left + 1) > sheet.cells.length) {
      for (const { row, column } of sheet.cells)
        if (areaContains(spill, row, column)) places.add(row * MAX_COLUMNS + column);
      continue;
    }
    for (let row = spill.top; row <= spill.bottom; row++) {
      for (let column = spill.left; column <= spill.right; column++) places.add(row * MAX_COLUMNS + column);
    }
  }
  return places;
}

function gridCell(cell: Cell): ICellData {
  return {
    ...gridScalar(cell.value),
    ...(cell.formula !== undefined && { f: `=${cell.formula}` }),
    s: String(cell.style),
  };
}

/** A value as the grid stores it. */
export function gridScalar(value: CellValue): Pick<ICellData, 'v' | 't'> {
  if (value === null) return {};
  if (value instanceof CellError) return { v: value.code, t: CellValueType.STRING };
  switch (typeof value) {
    case 'number':
      return { v: value, t: CellValueType.NUMBER };
    case 'boolean':
      return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
    default:
      return { v: value, t: CellValueType.STRING };
  }
}

/** A cell of the grid: its value in full precision. */
export function gridValue(cell: Nullable<ICellData>): CellValue {
  const value = cell?.v;
  if (value === undefined || value === null) return null;
  if (cell?.t === CellValueType.BOOLEAN) return Boolean(Number(value));
  if (typeof value !== 'string') return value;
  return value in ERRORS ? new CellError(value as ErrorCode) : value;
}

/** A name as the engine's service of defined names takes it. */
export interface GridName {
  readonly id: string;
  readonly name: string;
  readonly formulaOrRefString: string;
  readonly localSheetId: string;
}

export function gridNames(workbook: Workbook): Record<string, GridName> {
  const named = (one: DefinedName, index: number): [string, GridName] => {
    const id = `name-${index + 1}`;
    const local = workbook.sheets.findIndex((sheet) => sheet.name === one.sheet);
    return [
      id,
      {
        id,
        name: one.name,
        formulaOrRefString: `=${one.formula}`,
        localSheetId: local < 0 ? WHOLE_WORKBOOK : sheetId(local),
      },
    ];
  };
  // Print areas and kin are names of the file alone.
  return Object.fromEntries(workbook.names.filter(({ name }) => !name.startsWith('_xlnm.')).map(named));
}

/** Header and rows; the engine counts a table's totals row as data, so that stays outside. */
export function tableRange({ area, hasTotals }: Table): IRange {
  return gridRange({ ...area, bottom: area.bottom - (hasTotals ? 1 : 0) });
}

function gridTables(workbook: Workbook): Record<string, unknown> {
  const table = (one: Table) => ({
    id: one.name,
    name: one.name,
    range: tableRange(one),
    options: { showHeader: one.hasHeader },
    columns: one.columns.map((name) => ({
      id: name,
      displayName: name,
      dataType: 'string',
      formula: '',
      meta: {},
      style: {},
    })),
    filters: { tableColumnFilterList: [] },
    meta: {},
  });
  return Object.fromEntries(
    workbook.sheets.map((sheet, index) => [sheetId(index), { tables: sheet.tables.map(table) }]),
  );
}

export function gridRange({ top, left, bottom, right }: Area): IRange {
  return { startRow: top, startColumn: left, endRow: bottom, endColumn: right };
}
