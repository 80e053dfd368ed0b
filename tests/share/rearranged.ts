import { areaAddress, cellAddress, type Area } from '../../src/cells/address';

/** What a colleague does to the cells of a copy with the menus and the mouse: lines of LibreOffice's Basic for `doc`. */
export interface Rearranging {
  readonly says: string;
  readonly lines: readonly string[];
}

const sheetCalled = (name: string): string => `doc.Sheets.getByName("${name}")`;
const rangeOf = (sheet: string, area: Area): string =>
  `${sheetCalled(sheet)}.getCellRangeByName("${areaAddress(area)}")`;

export const deleted = (sheet: string, what: 'Rows' | 'Columns', at: number): Rearranging => ({
  says: `${what} ${at + 1} of ${sheet} deleted`,
  lines: [`${sheetCalled(sheet)}.${what}.removeByIndex(${at}, 1)`],
});

export const inserted = (sheet: string, what: 'Rows' | 'Columns', at: number): Rearranging => ({
  says: `${what} put in at ${at + 1} of ${sheet}`,
  lines: [`${sheetCalled(sheet)}.${what}.insertByIndex(${at}, 2)`],
});

export const cellsDeleted = (sheet: string, area: Area, how: 'UP' | 'LEFT'): Rearranging => ({
  says: `cells ${areaAddress(area)} of ${sheet} deleted, others moved ${how}`,
  lines: [
    `${sheetCalled(sheet)}.removeRange(${rangeOf(sheet, area)}.RangeAddress, com.sun.star.sheet.CellDeleteMode.${how})`,
  ],
});

const placed = (act: 'moveRange' | 'copyRange', sheet: string, area: Area, row: number, column: number) => {
  const to = `${sheetCalled(sheet)}.getCellRangeByName("${cellAddress(row, column)}").CellAddress`;
  return {
    says: `${areaAddress(area)} of ${sheet}: ${act} to ${cellAddress(row, column)}`,
    lines: [`${sheetCalled(sheet)}.${act}(${to}, ${rangeOf(sheet, area)}.RangeAddress)`],
  };
};

/** Cut and paste. */
export const moved = (sheet: string, area: Area, row: number, column: number): Rearranging =>
  placed('moveRange', sheet, area, row, column);

export const copied = (sheet: string, area: Area, row: number, column: number): Rearranging =>
  placed('copyRange', sheet, area, row, column);

/** The first line or column goes over the others. */
export const filled = (sheet: string, area: Area, to: 'BOTTOM' | 'TOP' | 'RIGHT' | 'LEFT'): Rearranging => ({
  says: `${areaAddress(area)} of ${sheet} filled to ${to}`,
  lines: [
    `${rangeOf(sheet, area)}.fillSeries(com.sun.star.sheet.FillDirection.TO_${to}, com.sun.star.sheet.FillMode.SIMPLE, 0, 0, 0)`,
  ],
});

/** By the first line or column, the largest in front. */
export const sorted = (sheet: string, area: Area, what: 'rows' | 'columns'): Rearranging => ({
  says: `${what} of ${areaAddress(area)} of ${sheet} sorted`,
  lines: [
    'Dim field(0) As New com.sun.star.table.TableSortField',
    'field(0).Field = 0 : field(0).IsAscending = False',
    'Dim how(2) As New com.sun.star.beans.PropertyValue',
    'how(0).Name = "SortFields" : how(0).Value = field()',
    `how(1).Name = "IsSortColumns" : how(1).Value = ${what === 'columns' ? 'True' : 'False'}`,
    'how(2).Name = "ContainsHeader" : how(2).Value = False',
    `${rangeOf(sheet, area)}.sort(how())`,
  ],
});

/** One procedure for each file: what is done to it, and where it is saved. */
export function basicOf(
  files: readonly { readonly from: string; readonly to: string; readonly act: Rearranging }[],
): string[] {
  const procedures = files.flatMap(({ from, to, act }, i) => [
    'End Sub',
    `Sub Work${i}`,
    'Dim quiet(0) As New com.sun.star.beans.PropertyValue',
    'quiet(0).Name = "Hidden" : quiet(0).Value = True',
    'Dim form(0) As New com.sun.star.beans.PropertyValue',
    'form(0).Name = "FilterName" : form(0).Value = "Calc MS Excel 2007 XML"',
    `doc = StarDesktop.loadComponentFromURL(ConvertToURL("${from}"), "_blank", 0, quiet())`,
    ...act.lines,
    'doc.calculateAll()',
    `doc.storeToURL(ConvertToURL("${to}"), form())`,
    'doc.close(True)',
  ]);
  return [...files.map((_, i) => `Work${i}`), ...procedures];
}
