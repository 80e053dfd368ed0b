import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { newWorkbook, saveWorkbook } from '../../src/package';
import { cellOf, Desk, type Tab } from './desk';

const SOON = { timeout: 20_000 };

const sheet = saveWorkbook(
  newWorkbook({
    sheets: [
      {
        name: 'Seat',
        cells: {
          A1: 'Units',
          B1: 'mm',
          A2: 'Draft',
          B2: 10,
          B3: { formula: 'IF(B2<20,"✓ holds","✗ does not hold")' },
          B90: { formula: '1/(B2-30)' },
        },
        validations: [
          {
            cells: 'B1',
            choices: ['in', 'mm'],
            refusal: { title: 'Units', text: 'Only inches or millimetres.' },
          },
          {
            cells: 'B2',
            accepts: 'B2<45',
            refusal: { style: 'warning', title: 'Draft', text: 'Steeper than a seat can be.' },
          },
        ],
      },
      { name: 'Other', cells: { A1: 'Nothing here' } },
    ],
  }),
  [],
);

let desk: Desk;
let tab: Tab;
let page: Page;

beforeAll(async () => {
  desk = await Desk.open();
  tab = await desk.tab(await desk.newcomer());
  page = tab.page;
  await tab.open({
    name: 'seat.xlsx',
    mimeType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
    buffer: Buffer.from(sheet),
  });
  await page.getByText('seat.xlsx', { exact: true }).waitFor();
  await tab.ready();
});
afterAll(async () => {
  await desk.close();
});

const saved = async (address: string, name = 'Seat') => cellOf(await tab.savedWorkbook(), name, address);
const value = async (address: string) => (await saved(address))?.value ?? null;
const place = () => page.locator('[data-u-comp="defined-name"] input').inputValue();

describe('an entry outside its list or bounds', () => {
  it('is refused with the rule’s own words, and may be mended or taken back', async () => {
    await tab.type('B1', 'cm');
    const dialog = page.getByRole('alertdialog');
    await dialog.getByText('Only inches or millimetres.').waitFor();
    await page.keyboard.press('Enter');
    await dialog.waitFor({ state: 'detached' });
    await page.keyboard.press('Backspace');
    await page.keyboard.press('Backspace');
    await page.keyboard.type('in');
    await page.keyboard.press('Enter');
    await expect.poll(() => value('B1'), SOON).toBe('in');
    await tab.type('B1', 'cm');
    await page.getByRole('button', { name: 'Take it back' }).click();
    await expect.poll(() => value('B1'), SOON).toBe('in');
  });

  it('that is only warned of may stay', async () => {
    await tab.type('B2', '50');
    await page.getByRole('alertdialog').getByText('Steeper than a seat can be.').waitFor();
    await page.getByRole('button', { name: 'Keep it' }).click();
    await expect.poll(() => value('B2'), SOON).toBe(50);
  });
});

it('cells in error and verdicts that do not hold are counted beside the tabs and reached by clicks', async () => {
  await tab.type('B2', '30');
  const mark = page.getByRole('button', { name: /^Seat ✗ 2/ });
  await mark.waitFor();
  await page.getByRole('tab', { name: 'Other' }).click();
  await mark.click();
  await expect.poll(place, SOON).toBe('B3');
  await mark.click();
  await expect.poll(place, SOON).toBe('B90');
  await mark.click();
  await expect.poll(place, SOON).toBe('B3');
  await tab.type('B2', '5');
  await mark.waitFor({ state: 'detached' });
});

it('gives the browser nothing to complain of', () => {
  expect(desk.troubles).toEqual([]);
});
