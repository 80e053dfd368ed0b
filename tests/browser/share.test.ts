import axe from 'axe-core';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import { cellOf, Desk, type Tab } from './desk';

const SAMPLE = fileURLToPath(new URL('../../samples/push-out-insert.xlsx', import.meta.url));
/** Where the pictures go, if anybody wants to look at them. */
const PICTURES = process.env['PICTURES'];
const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';
const ids = worksheetFunctions.map(({ id }) => id);

let desk: Desk;
let tab: Tab;
let page: Page;
let copy: Uint8Array;

beforeAll(async () => {
  desk = await Desk.open();
  tab = await desk.tab(await desk.newcomer());
  page = tab.page;
  await tab.open(SAMPLE);
  await tab.ready();
  await page.getByRole('complementary').getByRole('tab', { name: 'Share' }).click();
}, 120_000);
afterAll(async () => {
  await desk.close();
});

const share = () => page.getByRole('region', { name: 'Share', exact: true });
const report = () => share().getByRole('region', { name: 'Report of the copy' });
const returned = () => share().getByRole('region', { name: 'Report of what came back' });

const picture = async (name: string) => {
  if (PICTURES !== undefined) await page.screenshot({ path: `${PICTURES}/${name}.png` });
};

const faults = async (): Promise<string[]> => {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe: checker } = window as unknown as { axe: typeof axe };
    // The dummies are the control library's way of keeping the focus in a list.
    const { violations } = await checker.run({
      include: [['aside']],
      exclude: [['[data-tabster-dummy]']],
    });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
  });
};

/** A seat whose stored force is that of no catalogue, and a function that there is not. */
const olderSheet = () => ({
  name: 'older.xlsx',
  mimeType: XLSX,
  buffer: Buffer.from(
    saveWorkbook(
      newWorkbook({
        sheets: [
          {
            name: 'Seat',
            cells: {
              B1: { value: 100 },
              B2: { formula: 'MOLD.SEAT.FORCE(B1,5,0.15)', value: 400 },
              B3: { formula: 'MOLD.SEAT.FORSE(B1)', value: 1 },
            },
          },
        ],
      }),
      [],
    ),
  ),
});

describe('the Share tab beside the page', () => {
  it('makes a native copy with a basis sheet and reports every formula, by keys alone', async () => {
    await share().getByRole('button', { name: 'Make the copy' }).focus();
    await page.keyboard.press('Enter');
    await report().waitFor({ timeout: 50_000 });
    await picture('share-report');
    expect(await report().getByRole('heading', { level: 3 }).textContent()).toBe(
      'push-out-insert native.xlsx',
    );
    const count = readWorkbook(readFileSync(SAMPLE), ids)
      .sheets.flatMap(({ cells }) => cells)
      .filter(({ formula }) => formula?.includes('MOLD.')).length;
    const counts = await report().getByRole('heading', { level: 4 }).allTextContents();
    expect(counts.map((text) => parseInt(text, 10)).reduce((sum, n) => sum + n, 0)).toBe(count);
  });

  it('hands out the copy, which needs no function of ours', async () => {
    const saving = page.waitForEvent('download');
    await report().getByRole('button', { name: 'Download' }).click();
    const download = await saving;
    expect(download.suggestedFilename()).toBe('push-out-insert native.xlsx');
    copy = readFileSync(await download.path());
    const workbook = readWorkbook(copy, ids);
    const formulas = workbook.sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
    expect(formulas.length).toBeGreaterThan(20);
    expect(formulas.filter((formula) => formula.includes('MOLD.'))).toEqual([]);
    expect(workbook.sheets.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['How it is calculated', 'Basis']),
    );
  });

  it('brings a changed copy back, lists the change, and opens it', async () => {
    const workbook = readWorkbook(copy, ids);
    const [sheet] = workbook.sheets;
    const input = sheet?.cells.find(
      ({ formula, value }) => formula === undefined && typeof value === 'number',
    );
    if (!sheet || !input || typeof input.value !== 'number') throw new Error('The sample has no number.');
    const edited = saveWorkbook(workbook, [
      { sheet: sheet.name, row: input.row, column: input.column, value: input.value / 2 },
    ]);
    const choosing = page.waitForEvent('filechooser');
    await share().getByRole('button', { name: 'Choose the file…' }).click();
    await (await choosing).setFiles({ name: 'from Kim.xlsx', mimeType: XLSX, buffer: Buffer.from(edited) });
    await returned().waitFor({ timeout: 50_000 });
    await returned().scrollIntoViewIfNeeded();
    await picture('share-returned');
    expect(await returned().textContent()).toContain('One cell was changed since');
    expect(await returned().getByRole('listitem').allTextContents()).toEqual([
      expect.stringContaining(`${input.value} → ${input.value / 2}`) as string,
    ]);
    await returned().getByRole('button', { name: 'Open it here' }).click();
    await page.getByText('from Kim back.xlsx', { exact: true }).first().waitFor();
    await tab.ready();
    const saved = await tab.savedWorkbook();
    const formulas = saved.sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
    expect(formulas.some((formula) => formula.includes('MOLD.'))).toBe(true);
  });

  it('refuses a file that is no shared copy, by its name', async () => {
    const choosing = page.waitForEvent('filechooser');
    await share().getByRole('button', { name: 'Choose the file…' }).click();
    await (await choosing).setFiles(SAMPLE);
    await share().getByText('push-out-insert.xlsx carries no MOLD formulas').waitFor();
  });

  it('has no fault that a checker of accessibility finds', async () => {
    expect(await faults()).toEqual([]);
  });
});

describe('a file whose results are not those of the present functions', () => {
  it('is opened with a quiet bar that says so before anything is saved', async () => {
    await tab.open(olderSheet());
    await tab.ready();
    const bar = page.getByText(/^older\.xlsx: 2 results differ from the stored ones; 1 unknown function/);
    await bar.waitFor({ timeout: 30_000 });
    await picture('share-bar');
  });

  it('leads from the bar to the cells with old and new value', async () => {
    await page.getByRole('complementary').getByRole('tab', { name: 'Functions' }).click();
    await page.getByRole('button', { name: 'Show the cells' }).click();
    const check = share().getByRole('region', { name: 'Check' });
    const lines = await check.getByRole('listitem').allTextContents();
    await picture('share-check');
    // F/(sin a + µ cos a) by hand: 100/(0.0871557 + 0.15 × 0.9961947)
    expect(lines[0]).toMatch(/^Seat!B2400 → 422\.68/);
    expect(lines[1]).toMatch(/^Seat!B31 → #NAME\?/);
    expect(lines[2]).toMatch(/There is no function .* nearest: MOLD\.SEAT\.FORCE/);
    expect(await faults()).toEqual([]);
  });

  it('is left in peace when the bar is hidden, and holds nothing new', async () => {
    await page.getByRole('region', { name: 'Messages' }).getByRole('button', { name: 'Hide' }).click();
    await page.getByText('older.xlsx: 2 results').waitFor({ state: 'detached' });
    const saved = await tab.savedWorkbook();
    expect(cellOf(saved, 'Seat', 'B2')?.formula).toBe('MOLD.SEAT.FORCE(B1,5,0.15)');
  });
});

it('has made no error and asked nobody else for anything', () => {
  expect(desk.troubles).toEqual([]);
});
