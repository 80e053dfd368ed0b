import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { parseCell } from '../../src/cells/address';
import type { CellValue } from '../../src/cells/value';
import { readWorkbook, saveWorkbook } from '../../src/package';
import { newWorkbook } from '../../src/package/author';
import type { CellChange } from '../../src/package/changes';
import type { Workbook } from '../../src/package/model';
import { knownFunctions } from '../../src/package/spelling';
import { changeStructure } from '../../src/package/structure';
import { recalculate } from '../../src/workbook/recalculate';
import { readCells } from '../../src/whatif/plan';
import { applyChanges, beginVariants, presentChanges, resultChanges } from '../../src/whatif/variants';
import { readVariants } from '../../src/whatif/variants/read';

const ids = worksheetFunctions.map(({ id }) => id);
const put = async (workbook: Workbook, changes: readonly CellChange[]): Promise<Workbook> => {
  const changed = readWorkbook(saveWorkbook(workbook, changes), ids);
  return readWorkbook(saveWorkbook(changed, await recalculate(changed, worksheetFunctions)), ids);
};
const typed = (sheet: string, address: string, value: CellValue): CellChange => ({
  sheet,
  row: parseCell(address)?.row ?? 0,
  column: parseCell(address)?.column ?? 0,
  value,
});
function valueAt(workbook: Workbook, sheetName: string, address: string): CellValue {
  const place = parseCell(address);
  const sheet = workbook.sheets.find(({ name }) => name === sheetName);
  return sheet?.cells.find(({ row, column }) => row === place?.row && column === place.column)?.value ?? null;
}

const design = newWorkbook({
  sheets: [
    {
      name: 'Seat',
      cells: {
        A1: 'Metal',
        B1: 'steel',
        A2: 'Draft',
        B2: 3,
        C2: 'deg',
        A3: 'Push',
        B3: { formula: 'IF(B1="steel",100,60)/B2' },
        C3: 'N',
        A4: 'Seat',
        B4: { formula: 'IF(B3>20,"✓ holds","✗ does not hold")' },
      },
    },
  ],
});
const begun = await put(
  await beginVariants(design, worksheetFunctions, readCells('B1:B2', 'Seat'), readCells('B3,B4', 'Seat')),
  [],
);
const withA = await put(begun, presentChanges(begun, worksheetFunctions, 'A 3° steel'));
const other = await put(withA, [typed('Seat', 'B1', 'bronze'), typed('Seat', 'B2', 5)]);
const both = await put(other, presentChanges(other, worksheetFunctions, 'B 5° bronze'));
const calculated = await put(both, await resultChanges(both, worksheetFunctions));

describe('variants of a design', () => {
  it('stand side by side with inputs, results and verdicts, beside the design as it is', () => {
    const line = (row: number) =>
      ['A', 'C', 'D', 'E', 'F'].map((column) => valueAt(calculated, 'Variants', `${column}${row}`));
    expect(line(4)).toEqual([null, 'Unit', 'Design now', 'A 3° steel', 'B 5° bronze']);
    expect(line(5)).toEqual(['Metal', null, 'bronze', 'steel', 'bronze']);
    expect(line(6)).toEqual(['Draft', 'deg', 5, 3, 5]);
    expect(line(8)).toEqual(['Push', 'N', 12, expect.closeTo(100 / 3, 10), 12]);
    expect(line(9)).toEqual(['Seat', null, '✗ does not hold', '✓ holds', '✗ does not hold']);
  });

  it('leave the design alone until one is applied', async () => {
    expect(valueAt(calculated, 'Seat', 'B2')).toBe(5);
    const applied = await put(calculated, await applyChanges(calculated, worksheetFunctions, 'a 3° steel'));
    expect(['B1', 'B2', 'B4'].map((cell) => valueAt(applied, 'Seat', cell))).toEqual(['steel', 3, '✓ holds']);
  });

  it('are not lost to another of the same name; one that is empty takes the present values', async () => {
    const present = (workbook: Workbook): Promise<Workbook> =>
      put(workbook, presentChanges(workbook, worksheetFunctions, 'a 3° steel'));
    expect(() => presentChanges(calculated, worksheetFunctions, 'a 3° steel')).toThrow(
      /There is a variant "A 3° steel" with other values, which would be lost/,
    );
    const emptied = await put(calculated, [typed('Variants', 'E5', null), typed('Variants', 'E6', null)]);
    for (const filled of [await present(emptied), await present(await present(emptied))])
      expect(readVariants(filled)?.variants[0]).toMatchObject({ name: 'A 3° steel', values: ['bronze', 5] });
  });

  it('with an input left out say which, and are not applied', async () => {
    const gap = await put(calculated, [typed('Variants', 'E6', null)]);
    const done = await put(gap, await resultChanges(gap, worksheetFunctions));
    expect(valueAt(done, 'Variants', 'E8')).toBe('missing: Draft');
    expect(valueAt(done, 'Variants', 'F8')).toBe(12);
    await expect(applyChanges(gap, worksheetFunctions, 'A 3° steel')).rejects.toThrow(
      /leaves out Draft: nothing was changed/,
    );
  });

  it('say of themselves, by formulas, when the design or their own values have changed since', async () => {
    const standing = (workbook: Workbook) =>
      ['E7', 'F7', 'G7'].map((cell) => valueAt(workbook, 'Variants', cell));
    const stands = 'For the design as it stands.';
    const old = 'Made for other values: work out again.';
    expect(standing(both)).toEqual(['Not worked out yet.', 'Not worked out yet.', '']);
    expect(standing(calculated)).toEqual([stands, stands, '']);
    const typedOver = await put(calculated, [typed('Variants', 'F6', 4)]);
    expect(standing(typedOver)).toEqual([stands, old, '']);
    expect(readVariants(typedOver)?.variants.map((one) => one.standing)).toEqual([stands, old]);
    // Another input of the design, which no variant sets, and another formula.
    const stronger = await put(calculated, [
      { ...typed('Seat', 'B3', null), formula: 'IF(B1="steel",100,80)/B2' },
    ]);
    expect(standing(stronger)).toEqual([old, old, '']);
    const done = await put(stronger, await resultChanges(stronger, worksheetFunctions));
    expect(standing(done)).toEqual([stands, stands, '']);
    expect(valueAt(done, 'Variants', 'F8')).toBe(16);
  });

  it('rest on what is typed elsewhere in the design', async () => {
    const wide = newWorkbook({
      sheets: [
        {
          name: 'Plate',
          cells: {
            A1: 'Span',
            B1: 4,
            A2: 'Load',
            B2: 10,
            A3: 'Bending',
            B3: { formula: 'B1*B2' },
          },
        },
      ],
    });
    const calculatedWide = await put(wide, []);
    const on = await put(
      await beginVariants(
        calculatedWide,
        worksheetFunctions,
        readCells('B1', 'Plate'),
        readCells('B3', 'Plate'),
      ),
      [],
    );
    const named = await put(on, presentChanges(on, worksheetFunctions, 'A'));
    const worked = await put(named, await resultChanges(named, worksheetFunctions));
    expect(readVariants(worked)?.variants[0]?.standing).toBe('For the design as it stands.');
    const heavier = await put(worked, [typed('Plate', 'B2', 12)]);
    expect(readVariants(heavier)?.variants[0]?.standing).toBe('Made for other values: work out again.');
    const other = await put(worked, [typed('Plate', 'B1', 5)]);
    expect(readVariants(other)?.variants[0]?.standing).toBe('For the design as it stands.');
  });

  it('follow the design when its rows move and its sheet is renamed', () => {
    const known = knownFunctions(ids);
    const moved = changeStructure(
      changeStructure(calculated, { do: 'insert', what: 'rows', sheet: 'Seat', at: 0, count: 2 }, known),
      { do: 'renameSheet', sheet: 'Seat', name: 'Taper seat' },
      known,
    );
    expect(readVariants(moved)?.inputs).toEqual([
      { sheet: 'Taper seat', row: 2, column: 1, label: 'Metal', unit: '' },
      { sheet: 'Taper seat', row: 3, column: 1, label: 'Draft', unit: 'deg' },
    ]);
  });

  it('are in the units of their time: with another unit beside an input none is worked out or applied', async () => {
    const radians = await put(calculated, [typed('Seat', 'C2', 'rad')]);
    await expect(resultChanges(radians, worksheetFunctions)).rejects.toThrow(
      /Draft is in rad now.*have it in deg/,
    );
    await expect(applyChanges(radians, worksheetFunctions, 'A 3° steel')).rejects.toThrow(
      /Draft is in rad now/,
    );
  });

  it('leave what formulas give to the formulas', async () => {
    await expect(
      beginVariants(design, worksheetFunctions, readCells('B3', 'Seat'), readCells('B4', 'Seat')),
    ).rejects.toThrow(/Seat!B3 holds a formula/);
  });

  it('refuse in words what cannot be done', async () => {
    await expect(applyChanges(calculated, worksheetFunctions, 'C')).rejects.toThrow(
      'There is no variant "C"; there are "A 3° steel", "B 5° bronze".',
    );
    expect(() => presentChanges(design, worksheetFunctions, 'A')).toThrow(/no variants yet/);
    await expect(
      beginVariants(begun, worksheetFunctions, readCells('B1', 'Seat'), readCells('B3', 'Seat')),
    ).rejects.toThrow(/has a sheet "Variants" already/);
  });
});
