/** What a person changed of a sheet's layout since its workbook was opened. */
import { BooleanNumber, type IWorksheetData, type Nullable, type Worksheet } from '@univerjs/core';
import { areaAddress, type Area } from '../cells/address';
import type { SheetLayout } from '../package/layout';
import type { ColumnRun, Row, Sheet } from '../package/model';
import { columnCharacters, rowPoints } from '../package/pixels';
import { shownMerge } from './gridData';

type Data = Pick<
  IWorksheetData,
  'columnData' | 'rowData' | 'mergeData' | 'freeze' | 'showGridlines' | 'columnCount'
> &
  Partial<Pick<IWorksheetData, 'tabColor'>>;

/** Undefined where nothing of it was changed; `loaded` is what the grid was given of the sheet. */
export function changedLayout(opened: Sheet, loaded: Data, sheet: Worksheet): SheetLayout | undefined {
  const now = sheet.getConfig();
  const columns = changedColumns(opened, loaded, now);
  const rows = changedRows(opened, loaded, now);
  const merges = areasOf(now.mergeData).map(
    (merge) => opened.merges.find((one) => sameArea(shownMerge(opened, one), merge)) ?? merge,
  );
  const frozen = { rows: now.freeze.ySplit, columns: now.freeze.xSplit };
  const layout: SheetLayout = {
    ...(columns && { columns }),
    ...(rows.length > 0 && { rows }),
    ...(merges.map(areaAddress).sort().join() !== opened.merges.map(areaAddress).sort().join() && {
      merges,
    }),
    ...((frozen.rows !== loaded.freeze.ySplit || frozen.columns !== loaded.freeze.xSplit) && { frozen }),
    ...(now.showGridlines !== loaded.showGridlines && {
      showsGridlines: now.showGridlines === BooleanNumber.TRUE,
    }),
    ...(now.tabColor && now.tabColor !== loaded.tabColor && { tabColor: now.tabColor }),
  };
  return Object.keys(layout).length > 0 ? layout : undefined;
}

const sameArea = (a: Area, b: Area): boolean => areaAddress(a) === areaAddress(b);

const areasOf = (merges: Data['mergeData']) =>
  merges.map(({ startRow, startColumn, endRow, endColumn }) => ({
    top: startRow,
    left: startColumn,
    bottom: endRow,
    right: endColumn,
  }));

interface Size {
  readonly size: number | undefined;
  readonly hidden: boolean;
}

function columnSize(data: Data, column: number): Size {
  const one = data.columnData[column] as Nullable<{ w?: number; hd?: BooleanNumber }>;
  return { size: one?.w, hidden: one?.hd === BooleanNumber.TRUE };
}

function rowSize(data: Data, row: number): Size {
  const one = data.rowData[row] as Nullable<{ h?: number; ia?: BooleanNumber; hd?: BooleanNumber }>;
  // A height that the grid found for a text is none that a person set.
  const isSet = one?.h !== undefined && one.ia === BooleanNumber.FALSE;
  return { size: isSet ? one.h : undefined, hidden: one?.hd === BooleanNumber.TRUE };
}

const same = (a: Size, b: Size) => a.size === b.size && a.hidden === b.hidden;

function changedColumns(opened: Sheet, loaded: Data, now: Data): ColumnRun[] | undefined {
  const count = now.columnCount;
  const all = Array.from({ length: count }, (_, column) => ({
    column,
    before: columnSize(loaded, column),
    after: columnSize(now, column),
  }));
  if (all.every(({ before, after }) => same(before, after))) return undefined;
  const single = all.flatMap(({ column, before, after }): ColumnRun[] => {
    const old = opened.columns.find(({ first, last }) => first <= column && column <= last);
    const width = after.size === before.size ? old?.width : after.size && columnCharacters(after.size);
    if (width === undefined && !after.hidden && !old) return [];
    return [
      {
        first: column,
        last: column,
        hidden: after.hidden,
        style: old?.style ?? 0,
        ...(width !== undefined && { width }),
      },
    ];
  });
  const beyond = opened.columns
    .filter(({ last }) => last >= count)
    .map((run) => ({ ...run, first: Math.max(run.first, count) }));
  return [...single, ...beyond];
}

function changedRows(opened: Sheet, loaded: Data, now: Data): Row[] {
  const places = new Set([...Object.keys(loaded.rowData), ...Object.keys(now.rowData)].map(Number));
  return [...places].flatMap((row): Row[] => {
    const [before, after] = [rowSize(loaded, row), rowSize(now, row)];
    if (same(before, after)) return [];
    const old = opened.rows.find((one) => one.row === row)?.height;
    const height = after.size === before.size ? old : after.size && rowPoints(after.size);
    return [{ row, hidden: after.hidden, ...(height !== undefined && { height }) }];
  });
}
