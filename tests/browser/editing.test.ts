import axe from 'axe-core';
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
    const dialog = page.getByRole('alertdialog');
    for (const unit of ['mm', 'in', 'mm', 'in']) {
      await tab.type('B1', 'cm');
      await dialog.getByText('Only inches or millimetres.').waitFor();
      await page.keyboard.press('Enter');
      // Whoever types on at once types into the entry.
      await dialog.waitFor({ state: 'detached' });
      await page.keyboard.press('Backspace');
      await page.keyboard.press('Backspace');
      await page.keyboard.type(unit);
      await page.keyboard.press('Enter');
      await tab.isAt('B2');
    }
    await expect.poll(() => value('B1'), SOON).toBe('in');
    await tab.type('B1', 'cm');
    await page.getByRole('button', { name: 'Take it back' }).click();
    await expect.poll(() => value('B1'), SOON).toBe('in');
  });

  it('is chosen from its list by keys alone', async () => {
    await tab.select('B1');
    await page.keyboard.press('Alt+ArrowDown');
    // Whoever is quick has pressed on before the list is there.
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await expect.poll(() => value('B1'), SOON).toBe('mm');
    await page.keyboard.press('Alt+ArrowDown');
    const list = page.getByRole('listbox', { name: 'Choices' });
    await list.getByRole('option', { name: 'mm', selected: true }).waitFor();
    await page.keyboard.press('Escape');
    await list.waitFor({ state: 'detached' });
    await page.keyboard.type('in');
    await page.keyboard.press('Enter');
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

describe('the Sheet tab', () => {
  const part = (name: string) => page.getByRole('button', { name, exact: true });
  const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
  const names = async () => (await tab.savedWorkbook()).names.map(({ name }) => name);

  /** Of the whole page; the sentinels of the focus and the empty regions for messages are libraries'. */
  async function violations(): Promise<string[]> {
    await page.evaluate(axe.source);
    return page.evaluate(async () => {
      const { axe: checker } = window as unknown as { axe: typeof axe };
      const { violations: found } = await checker.run({
        exclude: [['[data-tabster-dummy]'], ['section[aria-label^="Notifications"]']],
      });
      return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
    });
  }

  it('finds and replaces what Ctrl+F asks for', async () => {
    await tab.type('D1', 'steel pin');
    await page.keyboard.press('Control+f');
    await page.getByLabel('Find', { exact: true }).fill('steel');
    await page.keyboard.press('Enter');
    await page.getByText('1 of 1', { exact: true }).waitFor();
    await expect.poll(place, SOON).toBe('D1');
    await page.getByLabel('Replace by').fill('brass');
    await press('Replace all');
    await page.getByText('One cell was changed.').waitFor();
    await expect.poll(() => value('D1'), SOON).toBe('brass pin');
  });

  it('names cells; undo takes the name back and redo brings it again', async () => {
    await part('Names').click();
    await tab.select('B2');
    await page.getByLabel('Name', { exact: true }).fill('draft');
    await press('Add the name');
    await part('Change draft').waitFor();
    await tab.select('F1');
    await page.keyboard.press('Control+z');
    await part('Change draft').waitFor({ state: 'detached' });
    await tab.select('F1');
    await page.keyboard.press('Control+y');
    await part('Change draft').waitFor();
    expect(await names()).toEqual(['draft']);
  });

  it('sets bounds, colors and notes that are in the file', async () => {
    await part('List and bounds').click();
    await tab.select('D2:D3');
    await page.getByLabel('Take only').selectOption('decimal');
    await page.getByLabel('From (a number or a cell)').fill('0');
    await page.getByLabel('To (a number or a cell)').fill('5');
    await press('Set the rule');
    await page.getByText('These cells take: A number from 0 to 5.').waitFor();
    await part('Colors by value').click();
    await page.getByLabel('Where a selected cell').selectOption('greaterThan');
    await page.getByLabel('Value, words or cell').fill('3');
    await press('Add the rule');
    await page.getByText('D2:D3: is greater than 3').waitFor();
    expect(await violations()).toEqual([]);
    await part('Note').click();
    await page.getByLabel('Note on the first selected cell').fill('Per side');
    await press('Keep the note');
    await page.locator('.cell-note').getByText('Per side').waitFor();
    const [first] = (await tab.savedWorkbook()).sheets;
    expect(first?.validations.at(-1)).toMatchObject({ kind: 'decimal', formulas: ['0', '5'] });
    expect(first?.conditionalFormats).toMatchObject([{ operator: 'greaterThan', formulas: ['3'] }]);
    expect(first?.notes).toEqual([{ row: 1, column: 3, text: 'Per side' }]);
  });

  it('sorts rows with their formulas, and formats numbers', async () => {
    await tab.type('D12', '2');
    await tab.type('D13', '1');
    await tab.type('E12', '=D12*10');
    await tab.type('E13', '=D13*10');
    await part('Sort, turn, freeze').click();
    await tab.select('D1:D13');
    await press('Smallest first');
    await page.getByText('The note on D2 would not go along: take it off first.').waitFor();
    await tab.select('D12:E13');
    await press('Smallest first');
    await expect.poll(() => saved('E12'), SOON).toMatchObject({ value: 10, formula: 'D12*10' });
    await tab.select('D12:E13');
    await page.keyboard.press('Control+z');
    await expect.poll(() => saved('E12'), SOON).toMatchObject({ value: 20, formula: 'D12*10' });
    expect(await value('D13')).toBe(1);
    await page.keyboard.press('Control+y');
    await expect.poll(() => value('D12'), SOON).toBe(1);
    await part('Number format').click();
    await page.getByLabel('Show numbers as').selectOption('inches');
    await press('Set the format');
    const workbook = await tab.savedWorkbook();
    expect(workbook.styles[cellOf(workbook, 'Seat', 'E12')?.style ?? 0]?.numberFormat).toBe('# ??/64\\"');
  });

  it('takes a decimal comma where it is chosen', async () => {
    await page.getByLabel('Decimal sign on this page').selectOption(',');
    await tab.type('G1', '0,5');
    await tab.type('G2', '1,25 mm');
    await page.getByLabel('Decimal sign on this page').selectOption('.');
    expect(await value('G1')).toBe(0.5);
    expect(await value('G2')).toBe('1.25 mm');
  });
});

it('cells that are cut and pasted take along what points at them', async () => {
  await tab.select('D12');
  await page.keyboard.press('Control+x');
  await tab.select('H5');
  await page.keyboard.press('Control+v');
  await expect.poll(async () => (await saved('E12'))?.formula, SOON).toBe('H5*10');
  expect(await value('H5')).toBe(1);
});

it('what was set is there after a reload', async () => {
  await page.reload();
  await tab.ready();
  const workbook = await tab.savedWorkbook();
  expect(workbook.names.map(({ name }) => name)).toEqual(['draft']);
  expect(workbook.sheets[0]?.conditionalFormats).toHaveLength(1);
});

it('gives the browser nothing to complain of', () => {
  expect(desk.troubles).toEqual([]);
});
