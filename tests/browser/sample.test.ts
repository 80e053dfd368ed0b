import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CellError, type CellValue } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import { cellAddress } from '../../src/cells/address';
import { type Workbook } from '../../src/package/model';
import { readWorkbook } from '../../src/package';
import { cellOf, Desk, type Tab } from './desk';

const run = promisify(execFile);
const command = fileURLToPath(new URL('../../dist/moldsheet.cjs', import.meta.url));
const ids = worksheetFunctions.map(({ id }) => id);

let desk: Desk;
let tab: Tab;

beforeAll(async () => {
  desk = await Desk.open();
  tab = await desk.tab(await desk.newcomer());
});
afterAll(async () => {
  await desk.close();
});

/** The row of the first sheet whose first cell says this. */
function rowOf(workbook: Workbook, label: string): number {
  const cell = workbook.sheets[0]?.cells.find(({ column, value }) => column === 0 && value === label);
  if (!cell) throw new Error(`No row says "${label}".`);
  return cell.row + 1;
}

function numberAt(workbook: Workbook, label: string, column: string): number {
  const { value } =
    cellOf(workbook, workbook.sheets[0]?.name ?? '', `${column}${rowOf(workbook, label)}`) ?? {};
  if (typeof value !== 'number') throw new Error(`"${label}" has no number in ${column}.`);
  return value;
}

const valuesOf = (workbook: Workbook): [string, CellValue][] =>
  workbook.sheets.flatMap((sheet) =>
    sheet.cells.map(({ row, column, value }): [string, CellValue] => [
      `${sheet.name}!${cellAddress(row, column)}`,
      value,
    ]),
  );

describe('the first design sheet', () => {
  it('is what a newcomer sees, without an error in it', async () => {
    await tab.page.getByText('push-out-insert.xlsx', { exact: true }).waitFor();
    const errors = valuesOf(await tab.savedWorkbook()).filter(([, value]) => value instanceof CellError);
    expect(errors).toEqual([]);
  });

  it('follows the draft, and the file it is saved to holds what the command line calculates', async () => {
    const before = await tab.savedWorkbook();
    await tab.type(`B${rowOf(before, 'Draft per side')}`, '8');
    const { path, bytes } = await tab.save();
    const after = readWorkbook(bytes, ids);

    const draft = (8 * Math.PI) / 180;
    const friction = numberAt(after, 'Friction going in', 'D');
    const push = numberAt(after, 'Push of the melt on the insert', 'D');
    // By hand: F / (sin a + mu cos a).
    const expected = push / (Math.sin(draft) + friction * Math.cos(draft));
    expect(numberAt(after, 'Force on the seat', 'D') / expected).toBeCloseTo(1, 9);
    expect(numberAt(before, 'Force on the seat', 'D') / expected).not.toBeCloseTo(1, 1);

    const out = join(mkdtempSync(join(tmpdir(), 'moldsheet-')), 'recalculated.xlsx');
    await run(process.execPath, [command, 'recalc', path, '-o', out]);
    const again = new Map(valuesOf(readWorkbook(readFileSync(out), ids)));
    const differing = valuesOf(after).filter(([place, value]) => {
      const other = again.get(place) ?? null;
      return typeof value === 'number' && typeof other === 'number'
        ? Math.abs(value - other) > 1e-12 * Math.max(Math.abs(value), Math.abs(other))
        : value !== other;
    });
    expect(differing).toEqual([]);
  });

  it('opens again from the menu of samples', async () => {
    await tab.page.getByRole('button', { name: 'Samples' }).click();
    await tab.page.getByRole('menuitem', { name: 'Push out insert' }).click();
    await tab.ready();
    const workbook = await tab.savedWorkbook();
    expect(numberAt(workbook, 'Draft per side', 'B')).not.toBe(8);
  });

  it('gives the browser nothing to complain of', () => {
    expect(desk.troubles).toEqual([]);
  });
});
