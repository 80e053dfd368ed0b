/** The workbook as the grid holds it, for the calculation. */
import { BooleanNumber } from '@univerjs/core';
import type { IRowData, Nullable, Worksheet } from '@univerjs/core';
import { cellFinder, type Workbook } from '../package/model';
import type { BookCell, BookContent, BookSheet } from '../sheet/content';
import type { GridCells } from './gridCells';
import { sheetId } from './gridData';

export function gridContent(
  opened: Workbook,
  sheets: readonly Worksheet[],
  cells: readonly GridCells[],
  isDate: (sheet: string) => (row: number, column: number) => boolean,
): BookContent {
  return {
    sheets: sheets.map((sheet, index) => ({
      ...sheetContent(opened, sheet, cells[index] as GridCells),
      isDate: isDate(sheet.getSheetId()),
    })),
    names: opened.names,
    date1904: opened.date1904,
    ...(opened.iterates && { iterates: true }),
    ...(opened.isFromMacintosh && { isFromMacintosh: true }),
  };
}

function sheetContent(opened: Workbook, sheet: Worksheet, cells: GridCells): BookSheet {
  const original = opened.sheets.find((_, index) => sheetId(index) === sheet.getSheetId());
  const before = original && cellFinder(original);
  const rows = Object.entries<Nullable<IRowData>>(sheet.getConfig().rowData as Record<string, IRowData>);
  return {
    name: sheet.getName(),
    tables: original?.tables ?? [],
    ...(original?.filters && { filters: original.filters }),
    rows: rows.map(([row, data]) => ({ row: Number(row), hidden: data?.hd === BooleanNumber.TRUE })),
    cells: cells.places().flatMap(({ row, column }): BookCell[] => {
      const { value, formula } = cells.typed(row, column);
      if (formula === undefined) return value === null ? [] : [{ row, column, value }];
      const old = before?.(row, column);
      // What came with the file stays of its kind; what was typed since may spill.
      if (old && old.formula === formula) return [{ ...old, value }];
      return [
        { row, column, value: null, formula, spill: { top: row, left: column, bottom: row, right: column } },
      ];
    }),
  };
}
