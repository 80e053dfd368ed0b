import { readdirSync, readFileSync } from 'node:fs';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { writeDesignSheets } from '../../src/excel/writeDesignSheets';
import { readWorkbook } from '../../src/package';
import { installStandIn } from './standIn/install';
import { StandInWorkbook } from './standIn/workbook';

let excel: StandInWorkbook;

beforeEach(() => {
  excel = new StandInWorkbook();
  const globals: Record<string, unknown> = {};
  installStandIn(globals, (steps) => excel.execute(steps));
  for (const [name, value] of Object.entries(globals)) vi.stubGlobal(name, value);
});

const design = (file: string) =>
  readWorkbook(
    readFileSync(`samples/${file}`),
    worksheetFunctions.map(({ id }) => id),
  );

/** Every value of a workbook's sheet, spilled ones included, numbers to ten digits. */
const values = (file: ReturnType<typeof design>, sheet: string): [string, unknown][] =>
  (file.sheets.find(({ name }) => name === sheet)?.cells ?? [])
    .filter(({ value }) => value !== null && value !== '')
    .map(({ row, column, value }) => [
      `${row},${column}`,
      typeof value === 'number' ? value.toPrecision(10) : value,
    ]);

describe('a design sheet written cell by cell', () => {
  it.each(readdirSync('samples').filter((file) => file.endsWith('.xlsx')))(
    '%s calculates to what its file holds',
    async (file) => {
      const original = design(file);
      const names = await writeDesignSheets(original);
      const written = readWorkbook(
        excel.file(),
        worksheetFunctions.map(({ id }) => id),
      );
      for (const name of names)
        expect(Object.fromEntries(values(written, name))).toEqual(Object.fromEntries(values(original, name)));
    },
    60_000,
  );

  it('is refused where a sheet of its name stands already, and changes nothing', async () => {
    const original = design('plates.xlsx');
    await writeDesignSheets(original);
    const before = excel.file();
    await expect(writeDesignSheets(original)).rejects.toThrow('already. Rename it');
    expect(excel.file()).toEqual(before);
  });
});
