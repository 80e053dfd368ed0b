import { expect, it } from 'vitest';
import { areaAddress } from '../../../src/cells/address';
import { readWorkbook, saveWorkbook } from '../../../src/package';
import type { Workbook } from '../../../src/package/model';
import { knownFunctions } from '../../../src/package/spelling';
import { changeStructure, type StructureAct } from '../../../src/package/structure';
import { gridData, shownMerge } from '../../../src/page/gridData';
import { Book } from '../../../src/sheet/book';
import { MAIN, small, zip } from '../packages';

const ROWS = 1_048_576;

/** A sheet with few cells whose merges, rules and formats take in all that a sheet can have. */
const opened = (data: string, more = '', before = ''): Workbook =>
  readWorkbook(
    zip({
      ...small(''),
      'xl/worksheets/sheet1.xml': `<worksheet xmlns="${MAIN}"><dimension ref="A1:XFD${ROWS}"/>${before}<sheetData>${data}</sheetData>${more}</worksheet>`,
    }),
    [],
  );
const ONE = '<row r="1"><c r="A1"><v>1</v></c></row>';

const changed = (workbook: Workbook, act: StructureAct): Workbook =>
  changeStructure(workbook, act, knownFunctions([]));
const insert = { do: 'insert', what: 'rows', sheet: 'Main', at: 1, count: 1 } as const;
const text = (workbook: Workbook): string =>
  new TextDecoder().decode(workbook.parts.get('xl/worksheets/sheet1.xml'));

it('merged cells of a whole sheet are shown as far as the grid reaches, and stay whole in the file', () => {
  const merged = opened(ONE, `<mergeCells count="1"><mergeCell ref="A1:XFD${ROWS}"/></mergeCells>`);
  const [sheet] = merged.sheets;
  const [merge] = sheet?.merges ?? [];
  if (!sheet || !merge) throw new Error('The merge is not read.');
  expect(areaAddress(shownMerge(sheet, merge))).toBe('A1:Z1000');
  expect(gridData(merged, 'large').sheets['sheet-1']?.mergeData).toEqual([
    { startRow: 0, startColumn: 0, endRow: 999, endColumn: 25 },
  ]);
  expect(text(changed(merged, insert))).toContain(`ref="A1:XFD${ROWS}"`);
  const saved = saveWorkbook(merged, [{ sheet: 'Main', row: 0, column: 0, value: 2 }]);
  expect(readWorkbook(saved, []).sheets[0]?.merges.map(areaAddress)).toEqual([`A1:XFD${ROWS}`]);
});

it('rules, formats and filters of whole columns are kept by insertions', () => {
  const ruled = opened(
    '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f>SUM(A:A)+COUNTIF(C:XFD,7)</f><v>1</v></c></row>',
    `<autoFilter ref="A1:XFD${ROWS}"/><conditionalFormatting sqref="A1:XFD${ROWS}"><cfRule type="expression" priority="1"><formula>$A1&gt;COUNTA($C:$C)</formula></cfRule></conditionalFormatting><dataValidations count="1"><dataValidation type="whole" sqref="C1:C${ROWS}"><formula1>1</formula1></dataValidation></dataValidations>`,
    '<cols><col min="1" max="16384" width="12" customWidth="1"/></cols>',
  );
  const after = changed(ruled, insert);
  expect(text(after)).toContain(`<conditionalFormatting sqref="A1:XFD${ROWS}">`);
  expect(text(after)).toContain(`sqref="C1:C${ROWS}"`);
  expect(text(after)).toContain('<col min="1" max="16384"');
  const book = new Book(after, []);
  book.calculate();
  expect(book.value(0, 0, 1)).toBe(1);
  expect(Object.keys(gridData(ruled, 'large').sheets['sheet-1']?.columnData ?? {})).toHaveLength(26);
});

it('rows that are listed and say nothing are left out of what is written', () => {
  const listed = opened(
    Array.from({ length: 50_000 }, (_, at) => `<row r="${at + 2}" spans="1:3"/>`).join(''),
  );
  expect(listed.sheets[0]?.rows).toEqual([]);
  expect(text(changed(listed, insert)).length).toBeLessThan(500);
  const high = opened('<row r="1048576" ht="30" customHeight="1"/>');
  const after = changed(high, { ...insert, do: 'delete' });
  expect(after.sheets[0]?.rows).toMatchObject([{ row: ROWS - 2, height: 30 }]);
});

it('an array of a whole sheet keeps the values of the file and says so', () => {
  const array = opened(
    `<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f t="array" ref="B1:XFD${ROWS}">A1:A${ROWS}*2</f><v>2</v></c></row>`,
  );
  const book = new Book(array, []);
  book.calculate();
  expect(book.value(0, 0, 1)).toBe(2);
  expect(book.keptCells()).toMatchObject([
    { row: 0, column: 1, reason: 'its array takes in more cells than can be held here' },
  ]);
  expect(gridData(array, 'large').sheets['sheet-1']?.cellData?.[0]?.[1]).toMatchObject({ v: 2 });
});
