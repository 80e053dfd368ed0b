import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Page } from 'playwright-core';
import { cellOf, Desk, type Tab } from './desk';

let desk: Desk;
let tab: Tab;
let page: Page;

beforeAll(async () => {
  desk = await Desk.open();
});
afterAll(async () => {
  await desk.close();
});

describe('a new workbook', () => {
  beforeAll(async () => {
    tab = await desk.tab(await desk.newcomer());
    page = tab.page;
    await page.getByRole('button', { name: 'New' }).click();
    await tab.ready();
  });

  it('helps with the arguments while a function is typed', async () => {
    await tab.select('B2');
    await page.keyboard.type('=MOLD.SEAT.FOR');
    await page.getByText('Summed normal force').first().waitFor();
    await page.keyboard.type('CE(');
    const help = page.locator('[id^="univer-popup-portal"] section', { hasText: 'MOLD.SEAT.FORCE(' });
    await help.waitFor();
    expect(await help.textContent()).toContain('MOLD.SEAT.FORCE(push,draft,friction,[units])');
    await page.keyboard.type('100,');
    await help
      .locator('.univer-text-primary-500', { hasText: /^draft$/ })
      .first()
      .waitFor();
    await page.keyboard.press('Escape');
    await page.keyboard.press('Escape');
  });

  it('calculates what is typed, and saves it with its results', async () => {
    await tab.type('B2', '10');
    await tab.type('B3', '=MOLD.SEAT.FREEDRAFT(0.1)');
    await tab.type('B4', '=B2*2');
    const workbook = await tab.savedWorkbook();
    expect(cellOf(workbook, 'Sheet1', 'B2')?.value).toBe(10);
    // arctan 0.1 in degrees, by the series 0.1 - 0.001/3 + 0.00001/5 - …
    expect(cellOf(workbook, 'Sheet1', 'B3')?.value).toBeCloseTo(5.710593137, 8);
    expect(cellOf(workbook, 'Sheet1', 'B3')?.formula).toBe('MOLD.SEAT.FREEDRAFT(0.1)');
    expect(cellOf(workbook, 'Sheet1', 'B4')?.value).toBe(20);
  });

  it.each(['=IF(3>1.0,"yes","no")', '=J1*2.50&" mm"', '=.5+1E-3', '=IF(A1>=1.10,"a","b")'])(
    'keeps the formula %s as it was typed',
    async (formula) => {
      await tab.type('D2', formula);
      // What the cell's editor shows is what it holds after another edit.
      await tab.select('D2');
      await page.keyboard.press('F2');
      await page.keyboard.press('Enter');
      expect(cellOf(await tab.savedWorkbook(), 'Sheet1', 'D2')?.formula).toBe(formula.slice(1));
    },
  );

  it('loses no key of formulas that are typed one after another, while it keeps the ones before', async () => {
    const cells = ['H1', 'H2', 'H3', 'H4', 'H5'];
    for (const cell of cells) await tab.type(cell, '=MOLD.SEAT.FREEDRAFT(0.1)');
    const saved = await tab.savedWorkbook();
    for (const cell of cells) expect(cellOf(saved, 'Sheet1', cell)?.formula).toBe('MOLD.SEAT.FREEDRAFT(0.1)');
  });

  it('enters the function that was typed, not the first of a list that is behind', async () => {
    const list = page.locator('[data-u-comp="sheets-formula-editor"]').getByText('ORCE', { exact: true });
    await tab.select('H6');
    await page.keyboard.type('=MOLD.SEAT.F');
    await list.waitFor();
    await page.keyboard.type('REEDRAFT(0.1)');
    await page.keyboard.press('Enter');
    await tab.isAt('H7');
    const saved = await tab.savedWorkbook();
    expect(cellOf(saved, 'Sheet1', 'H6')?.formula).toBe('MOLD.SEAT.FREEDRAFT(0.1)');
  });

  it('takes fractions as numbers that look as they were typed, and threads as text', async () => {
    await tab.type('G1', '5/8');
    await tab.type('G2', '10-24');
    await tab.type('G3', '=G1*2');
    const workbook = await tab.savedWorkbook();
    const fraction = cellOf(workbook, 'Sheet1', 'G1');
    expect(fraction?.value).toBe(0.625);
    expect(workbook.styles[fraction?.style ?? 0]?.numberFormat).toBe('?/8');
    expect(cellOf(workbook, 'Sheet1', 'G2')?.value).toBe('10-24');
    expect(cellOf(workbook, 'Sheet1', 'G3')?.value).toBe(1.25);
  });

  it('saves what a formula spills, and no more of it once it is shorter', async () => {
    await tab.type('E1', '3');
    await tab.type('E2', '=SEQUENCE(E1)*10');
    expect(cellOf(await tab.savedWorkbook(), 'Sheet1', 'E4')?.value).toBe(30);
    await tab.type('E1', '2');
    const workbook = await tab.savedWorkbook();
    expect(cellOf(workbook, 'Sheet1', 'E3')?.value).toBe(20);
    expect(cellOf(workbook, 'Sheet1', 'E4')?.value ?? null).toBeNull();
  });

  it('says where an error began, at the cells that depend on it', async () => {
    await tab.type('F1', '=MOLD.SEAT.FREEDRAFT("slippery")');
    await tab.type('F2', '=F1+1');
    await tab.select('F2');
    await page.locator('.cell-note-error').getByText('Sheet1!F1: ').waitFor();
  });

  it('says why a cell is in error, in the panel and under the formula bar', async () => {
    await tab.type('B6', '=MOLD.SEAT.FREEDRAFT("slippery")');
    await tab.select('B6');
    await page.getByRole('alert').getByText('"slippery"').waitFor();
    await page.locator('.cell-note-error').getByText('"slippery"').waitFor();
  });

  it('saves the looks of cells, and sheets that are added', async () => {
    await tab.select('B2');
    await page.keyboard.press('Control+b');
    await page.locator('[data-u-comp="sheet-bar-append-button"]').first().click();
    await tab.type('A1', '=Sheet1!B2+1');
    const workbook = await tab.savedWorkbook();
    expect(workbook.styles[cellOf(workbook, 'Sheet1', 'B2')?.style ?? -1]?.font.bold).toBe(true);
    expect(workbook.styles[cellOf(workbook, 'Sheet1', 'B4')?.style ?? -1]?.font.bold).toBe(false);
    expect(workbook.sheets.map(({ name }) => name)).toEqual(['Sheet1', 'Sheet2']);
    expect(cellOf(workbook, 'Sheet2', 'A1')).toMatchObject({ value: 11, formula: 'Sheet1!B2+1' });
    await page.getByText('Sheet1', { exact: true }).click();
  });

  it('does nothing that a browser complains of, and asks nobody else for anything', () => {
    expect(desk.troubles).toEqual([]);
  });
});
