import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ExcelDesk } from './excelDesk';

/** The narrowest that Excel makes a panel, and a comfortable one. */
describe.each([320, 450])('the panel in Excel, %i pixels wide', (width) => {
  let desk: ExcelDesk;
  beforeAll(async () => {
    desk = await ExcelDesk.open(width);
  });
  afterAll(async () => {
    await desk.close();
  });
  const button = (name: string | RegExp) => desk.page.getByRole('button', { name });

  it('lists the functions and finds one by words', async () => {
    await desk.page.getByRole('searchbox').fill('smallest draft');
    await button(/^SEAT\.FREEDRAFT/).click();
    expect(await desk.page.getByRole('article').textContent()).toContain('MOLD.SEAT.FREEDRAFT');
    await desk.page.screenshot({ path: `reports/excel-help-${width}.png` });
  });

  it('enters the function into the selected cell and says what is missing', async () => {
    await desk.select('Sheet1', 'B2');
    await button('Insert at the selected cell').click();
    await desk.page.getByRole('alert').waitFor();
    expect(await desk.page.getByRole('region', { name: 'Selected cell' }).textContent()).toContain('#VALUE!');
    expect(desk.workbook.sheet('Sheet1').cells.get('1 1')?.formula).toBe('MOLD.SEAT.FREEDRAFT()');
    await desk.page.screenshot({ path: `reports/excel-cell-${width}.png` });
  });

  it('opens at the design sheets from the ribbon', async () => {
    await desk.click('insertDesignSheet');
    await desk.page.getByRole('region', { name: 'Design sheets' }).waitFor();
    await desk.page.screenshot({ path: `reports/excel-sheets-${width}.png` });
  });

  it('needs no sideways scrolling', async () => {
    expect(await desk.page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  });

  it('asks nobody but its own server and Microsoft for anything, and makes no error', () => {
    expect(desk.troubles).toEqual([]);
  });
});
