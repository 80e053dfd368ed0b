import { afterAll, beforeAll, expect, it } from 'vitest';
import { cellOf, Desk, type Tab } from './desk';

let desk: Desk;
let tab: Tab;

beforeAll(async () => {
  desk = await Desk.open();
  tab = await desk.tab(await desk.newcomer());
});
afterAll(async () => {
  await desk.close();
});

const verdictOf = async (label: string) => {
  const [sheet] = (await tab.savedWorkbook()).sheets;
  const row = sheet?.cells.find(({ column, value }) => column === 0 && value === label)?.row;
  return sheet?.cells.filter((one) => one.row === row).map(({ value }) => value);
};

it('a design sheet is made of chosen sections, and holds', async () => {
  const { page } = tab;
  await page.getByRole('button', { name: 'Samples' }).click();
  await page.getByRole('menuitem', { name: 'A design sheet of your own sections…' }).click();
  const dialog = page.getByRole('dialog', { name: 'New design sheet' });
  await dialog.getByRole('checkbox', { name: 'Taper seat' }).check();
  await dialog.getByRole('checkbox', { name: 'Spring and shim' }).check();
  await page.screenshot({ path: 'reports/design-dialog.png' });
  await dialog.getByRole('button', { name: 'Make the design sheet' }).click();
  await dialog.waitFor({ state: 'detached' });
  await tab.ready();
  await page.screenshot({ path: 'reports/design-sheet.png' });
  expect(await verdictOf('The whole design')).toContain('✓ holds');
  expect(await verdictOf('Keeps the insert home')).toContain('✓ holds');
});

it('a function is written into a sheet as a form, asks before filled cells, and goes with one undo', async () => {
  const { page } = tab;
  await page.getByRole('button', { name: 'New' }).click();
  await tab.ready();
  await tab.type('C3', 'mine');
  const panel = page.getByRole('complementary', { name: 'Functions' });
  await panel.getByRole('searchbox').fill('SEAT.FORCE');
  await panel.getByRole('button', { name: /^SEAT\.FORCE/ }).click();
  await tab.select('B2');
  await panel.getByRole('button', { name: 'Write a form at the selected cell' }).click();
  await panel.getByRole('button', { name: /^Write it at / }).click();
  await panel.getByText('Undo takes all of it back.').waitFor();
  await page.screenshot({ path: 'reports/form.png' });
  const written = await tab.savedWorkbook();
  expect(cellOf(written, 'Sheet1', 'C3')?.value).toBe('mine');
  const [result] =
    written.sheets[0]?.cells.filter(({ formula }) => formula?.startsWith('MOLD.SEAT.FORCE(')) ?? [];
  expect(result?.value).toBeGreaterThan(0);
  expect(written.names.map(({ name }) => name)).toEqual(
    expect.arrayContaining(['push', 'draft', 'friction']),
  );
  await tab.select('A1');
  await page.keyboard.press('Control+z');
  await expect
    .poll(
      async () => (await tab.savedWorkbook()).sheets[0]?.cells.filter(({ value }) => value !== null).length,
      {
        timeout: 30_000,
      },
    )
    .toBe(1);
});

it('gives the browser nothing to complain of', () => {
  expect(desk.troubles).toEqual([]);
});
