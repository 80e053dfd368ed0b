import { describe, expect, it } from 'vitest';
import { newWorkbook, renameSheets } from '../../src/package/author';
import { readWorkbook, saveWorkbook } from '../../src/package';

describe('renaming sheets', () => {
  const workbook = newWorkbook({
    sheets: [
      { name: 'One', cells: { A1: 1 } },
      { name: 'Two', cells: { A1: 2 } },
    ],
  });

  it('gives each its new name, also where they change places, and keeps their cells', () => {
    const names = new Map([
      ['One', 'Two'],
      ['Two', 'Dowels & "pins"'],
    ]);
    const back = readWorkbook(saveWorkbook(renameSheets(workbook, names), []), []);
    expect(back.sheets.map(({ name, cells }) => [name, cells[0]?.value])).toEqual([
      ['Two', 1],
      ['Dowels & "pins"', 2],
    ]);
  });

  it('changes nothing where nothing is renamed', () => {
    expect(saveWorkbook(renameSheets(workbook, new Map()), [])).toEqual(saveWorkbook(workbook, []));
  });
});
