import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { cellOf, Desk, type Tab } from './desk';

let desk: Desk;
let tab: Tab;
let page: Page;

beforeAll(async () => {
  desk = await Desk.open();
  tab = await desk.tab(await desk.newcomer({ permissions: ['clipboard-read', 'clipboard-write'] }));
  page = tab.page;
  await page.getByRole('button', { name: 'New', exact: true }).click();
  await tab.ready();
  await tab.type('A1', '2');
  await tab.type('A2', '3');
  await tab.type('B4', '=A1*A2');
});
afterAll(async () => {
  await desk.close();
});

/** Opens the menu of a row's heading and takes an entry of it. */
async function rowMenu(row: number, entry: string): Promise<void> {
  await page.mouse.click(22, 165 + 20 * (row - 1), { button: 'right' });
  await page.getByText(entry).first().click();
}

/** A menu entry that asks for a number takes the one that stands there by a click on its picture. */
async function insertAbove(row: number): Promise<void> {
  await page.mouse.click(22, 165 + 20 * (row - 1), { button: 'right' });
  const entry = page.getByText('rows above');
  await entry.waitFor();
  const words = await entry.boundingBox();
  await page.mouse.click(49, (words?.y ?? 0) + (words?.height ?? 0) / 2);
}

const SOON = { timeout: 15_000 };

/** With the grid in focus. */
async function press(keys: string): Promise<void> {
  await tab.select('D1');
  await page.keyboard.press(keys);
}

const cell = async (address: string) => {
  const saved = cellOf(await tab.savedWorkbook(), 'Sheet1', address);
  return saved && { formula: saved.formula, value: saved.value };
};
const product = { formula: 'A1*A3', value: 6 };

describe('rows', () => {
  it('are inserted, and formulas follow', async () => {
    await insertAbove(2);
    await expect.poll(() => cell('B5'), SOON).toEqual(product);
  });

  it('come back by undo and go again by redo, whole, with the entries before them one by one', async () => {
    await press('Control+z');
    await expect.poll(() => cell('B4'), SOON).toEqual({ formula: 'A1*A2', value: 6 });
    await press('Control+z');
    const values = async () => [(await cell('A2'))?.value ?? null, (await cell('B4'))?.value ?? null];
    await expect.poll(values, SOON).toEqual([3, null]);
    await press('Control+z');
    await expect.poll(values, SOON).toEqual([null, null]);
    await press('Control+y');
    await press('Control+y');
    await expect.poll(() => cell('B4'), SOON).toEqual({ formula: 'A1*A2', value: 6 });
    await press('Control+y');
    await expect.poll(() => cell('B5'), SOON).toEqual(product);
  });

  it('take what is typed before they are there, and a click on a button does not keep the keys', async () => {
    await tab.select('A2');
    await insertAbove(2);
    await page.keyboard.type('7');
    await page.keyboard.press('Enter');
    await tab.isAt('A3');
    await page.keyboard.type('=A1*5');
    await page.keyboard.press('Enter');
    await tab.isAt('A4');
    await expect.poll(() => cell('A2'), SOON).toEqual({ formula: undefined, value: 7 });
    // Saving was a click: the keys are the sheet's again.
    await page.keyboard.type('9');
    await page.keyboard.press('Enter');
    await tab.isAt('A5');
    expect(await cell('A3')).toEqual({ formula: 'A1*5', value: 10 });
    expect(await cell('A4')).toEqual({ formula: undefined, value: 9 });
    // Each of them is taken back, and the row with them.
    for (let steps = 0; steps < 4; steps++) await page.keyboard.press('Control+z');
    await expect.poll(() => cell('B5'), SOON).toEqual(product);
  });

  it('are deleted, and what needed them says so', async () => {
    await rowMenu(3, 'Delete Selected Row');
    await expect.poll(async () => (await cell('B4'))?.formula, SOON).toBe('A1*#REF!');
    await press('Control+z');
    await expect.poll(() => cell('B5'), SOON).toEqual(product);
  });
});

describe('a large table of the clipboard', () => {
  it('goes into the cells as if it had been typed, and is taken back in one step', async () => {
    const count = async () =>
      (await tab.savedWorkbook()).sheets[0]?.cells.filter(({ value }) => value !== null).length;
    const before = (await count()) ?? 0;
    await page.evaluate(() => navigator.clipboard.writeText('5/8\t10-24\t7\n'.repeat(3_000)));
    await press('Control+v');
    await expect.poll(count, SOON).toBe(before + 9_000);
    const workbook = await tab.savedWorkbook();
    expect(cellOf(workbook, 'Sheet1', 'D3000')?.value).toBe(0.625);
    expect(cellOf(workbook, 'Sheet1', 'E3000')?.value).toBe('10-24');
    await press('Control+z');
    await expect.poll(count, SOON).toBe(before);
  });
});

describe('a filter', () => {
  const first = async () => (await tab.savedWorkbook()).sheets[0];
  const hidden = async () => (await first())?.rows.filter((one) => one.hidden).map(({ row }) => row + 1);
  const brass = () => page.getByRole('checkbox', { name: 'Brass' });
  const filter = () =>
    page
      .getByRole('group', { name: 'Stays to be seen' })
      .locator('..')
      .getByRole('button', { name: 'Filter', exact: true })
      .click();

  it('has arrows at its headings, for the keyboard', async () => {
    for (const [at, text] of ['Metal', 'Steel', 'Brass'].entries()) await tab.type(`H${at + 1}`, text);
    await page.getByRole('tab', { name: 'Sheet', exact: true }).click();
    await page.getByRole('button', { name: 'Filter', exact: true }).click();
    await tab.select('H1:H3');
    await brass().waitFor();
    await filter();
    await page.getByText('A filter works on H1:H3').waitFor();
    await tab.select('H1');
    await page.keyboard.press('Alt+ArrowDown');
    await page.waitForFunction(() => document.activeElement?.getAttribute('type') === 'checkbox');
    await brass().uncheck();
    await filter();
    await expect.poll(hidden, SOON).toEqual([3]);
    expect((await first())?.filter?.columns).toEqual([{ column: 0, shows: ['Steel'] }]);
  });

  it('and for the mouse', async () => {
    await tab.select('A5');
    await brass().waitFor({ state: 'detached' });
    // The lower right corner of H1.
    await page.mouse.click(549, 166);
    await brass().check();
    await filter();
    await expect.poll(hidden, SOON).toEqual([]);
    expect((await first())?.filter?.columns).toEqual([]);
  });

  it('leaves the keys to the sheet while it is open', async () => {
    await tab.type('J2', 'kept');
    await expect.poll(async () => (await cell('J2'))?.value, SOON).toBe('kept');
  });
});

describe('printing', () => {
  it('shows the pages before', async () => {
    await page.getByRole('button', { name: 'Print…' }).click();
    const pages = page.frameLocator('iframe[title="The pages"]');
    await pages.getByText('6', { exact: true }).first().waitFor();
    await page.getByRole('dialog').getByRole('button', { name: 'Close', exact: true }).click();
  });
});

describe('sheets', () => {
  it('are copied with all that is on them', async () => {
    await page.getByText('Sheet1', { exact: true }).click({ button: 'right' });
    await page.getByText('Copy', { exact: true }).last().click();
    await expect
      .poll(async () => (await tab.savedWorkbook()).sheets.map(({ name }) => name), SOON)
      .toEqual(['Sheet1', 'Sheet1 copy']);
  });
});

describe('what a person sets of a sheet', () => {
  it('is there after a reload', async () => {
    await page.getByText('Sheet1', { exact: true }).click();
    const edge = await page.mouse.move(110, 145).then(() => page.mouse);
    await edge.down();
    await edge.move(180, 145, { steps: 5 });
    await edge.up();
    const width = async () =>
      (await tab.savedWorkbook()).sheets[0]?.columns.find(({ first }) => first === 0)?.width;
    await expect.poll(width, SOON).toBeGreaterThan(12);
    await tab.kept();
    await page.reload();
    await tab.ready();
    expect(await width()).toBeGreaterThan(12);
  });

  it('gives the browser nothing to complain of', () => {
    expect(desk.troubles).toEqual([]);
  });
});
