import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Workbook } from '../../src/package/model';
import { cellOf, Desk, type Tab } from './desk';

/** A whole design is calculated, written and read again many times here: a slow machine takes its time, in ms. */
const PATIENCE = 240_000;

let desk: Desk;
let tab: Tab;

beforeAll(async () => {
  desk = await Desk.open();
  tab = await desk.tab(await desk.newcomer());
  tab.page.setDefaultTimeout(PATIENCE);
}, PATIENCE);
afterAll(async () => {
  await desk.close();
});

const verdictOf = ({ sheets: [sheet] }: Workbook, label: string) => {
  const row = sheet?.cells.find(({ column, value }) => column === 0 && value === label)?.row;
  return sheet?.cells.filter((one) => one.row === row).map(({ value }) => value);
};

/** What a person does with mouse or keyboard, counted: a click, a choice, a cell gone to, an entry. */
let acts = 0;
const act = async (part: Promise<void>): Promise<void> => {
  acts += 1;
  await part;
};
const panel = () => tab.page.getByRole('complementary', { name: 'Functions' });
/** The cell of the design sheet in a column of the row with this label. */
const cell = (workbook: Workbook, label: string, column: 'B' | 'D'): string => {
  const row = workbook.sheets[0]?.cells.find((one) => one.column === 0 && one.value === label)?.row;
  if (row === undefined) throw new Error(`The design has no row ${label}.`);
  return `${column}${row + 1}`;
};
const valueIn = async (label: string, column: 'B' | 'D') => {
  const workbook = await tab.savedWorkbook();
  return cellOf(workbook, 'Design', cell(workbook, label, column))?.value;
};
const undo = async () => {
  await tab.select('A1');
  await tab.page.keyboard.press('Control+z');
};

it(
  'a design sheet is built from nothing in less than thirty acts, and holds',
  async () => {
    const { page } = tab;
    await act(page.getByRole('button', { name: 'New' }).click());
    await tab.ready();
    await act(page.getByRole('button', { name: 'Samples' }).click());
    await act(page.getByRole('menuitem', { name: 'A design sheet of your own sections…' }).click());
    const dialog = page.getByRole('dialog', { name: 'New design sheet' });
    await act(dialog.getByRole('checkbox', { name: 'Taper seat' }).check());
    await act(dialog.getByRole('checkbox', { name: 'Spring and shim' }).check());
    await act(dialog.getByRole('radio', { name: 'mm' }).check());
    await page.screenshot({ path: 'reports/design-dialog.png' });
    await act(dialog.getByRole('button', { name: 'Make the design sheet' }).click());
    await dialog.waitFor({ state: 'detached' });
    await tab.ready();
    await page.screenshot({ path: 'reports/design-sheet.png' });
    const made = await tab.savedWorkbook();
    for (const [label, value] of [
      ['Draft per side', '5.5'],
      ['Length of contact', '14'],
      ['Lift of pins or insert', '4.5'],
    ] as const) {
      const address = cell(made, label, 'B');
      await act(tab.select(address));
      await act(page.keyboard.type(`${value}\n`));
      await tab.isAt(`B${Number(address.slice(1)) + 1}`);
    }
    // One more function, which takes what the sheet has.
    await act(panel().getByRole('searchbox').fill('SEAT.SLIDEBACK'));
    await act(
      panel()
        .getByRole('button', { name: /^SEAT\.SLIDEBACK/ })
        .click(),
    );
    const last = Math.max(...(made.sheets[0]?.cells.map(({ row }) => row) ?? []));
    await act(tab.select(`A${last + 3}`));
    await act(panel().getByRole('button', { name: 'Write a form at the selected cell' }).click());
    await panel()
      .getByText(/^The workbook has .*draft at D\d+.* already\./)
      .waitFor();
    await act(panel().getByRole('button', { name: 'Share them' }).click());
    await panel().getByText('Undo takes all of it back.').waitFor();
    expect(acts).toBeLessThan(30);

    const built = await tab.savedWorkbook();
    const form = built.sheets[0]?.cells.find(({ formula }) => formula?.startsWith('MOLD.SEAT.SLIDEBACK('));
    expect(form?.formula).toContain('draft');
    expect(form?.value).toBeTypeOf('number');
    expect(built.names.map(({ name }) => name)).not.toContain('draft_2');
    for (const label of ['The whole design', 'Keeps the insert home'])
      expect(verdictOf(built, label)).toContain('✓ holds');
  },
  PATIENCE,
);

it(
  'variants of a design stand side by side, and one is applied with one undo',
  async () => {
    const { page } = tab;
    await panel().getByRole('tab', { name: 'What if' }).click();
    await panel().getByRole('tab', { name: 'Variants' }).click();
    const design = await tab.savedWorkbook();
    const draft = cell(design, 'Draft per side', 'B');
    await panel().getByRole('textbox', { name: 'Inputs that differ' }).fill(`Design!${draft}`);
    await panel()
      .getByRole('textbox', { name: 'Results to compare' })
      .fill(`Design!${cell(design, 'Push that breaks it loose', 'D')}`);
    await panel().getByRole('button', { name: 'Begin with these cells' }).click();
    await panel().getByText('The workbook has a sheet Variants now').waitFor();
    const add = async (name: string) => {
      await panel().getByRole('textbox', { name: 'Name of a variant' }).fill(name);
      await panel().getByRole('button', { name: 'Add', exact: true }).click();
      await panel().getByText(`${name} has the present values of Draft per side.`).waitFor();
    };
    await add('A 5.5 deg');
    await tab.type(draft, '8');
    await tab.isAt(`B${Number(draft.slice(1)) + 1}`);
    await add('B 8 deg');
    const [, ...both] =
      (await tab.savedWorkbook()).sheets.find(({ name }) => name === 'Variants')?.cells ?? [];
    const line = (row: number) =>
      both.filter((one) => one.row === row && one.column > 3).map(({ value }) => value);
    expect(line(4).slice(0, 2)).toEqual([5.5, 8]);
    const [steep = NaN, shallow = NaN] = line(6).slice(0, 2).map(Number);
    expect(steep).toBeGreaterThan(shallow);
    await page.screenshot({ path: 'reports/variants.png' });
    await panel().getByRole('button', { name: 'Apply A 5.5 deg' }).click();
    await panel().getByText('A 5.5 deg is in the design now.').waitFor();
    expect(await valueIn('Draft per side', 'B')).toBe(5.5);
    await undo();
    await expect.poll(() => valueIn('Draft per side', 'B'), { timeout: PATIENCE }).toBe(8);
  },
  PATIENCE,
);

it(
  'a function is written as a form from the menu of a cell, asks before filled cells, and goes with one undo',
  async () => {
    const { page } = tab;
    await page.getByRole('button', { name: 'New' }).click();
    await tab.ready();
    await tab.type('D9', 'mine');
    await panel().getByRole('tab', { name: 'Functions' }).click();
    // In the menu of a cell some rows above and a column to the left.
    await page.mouse.click(200, 250, { button: 'right' });
    await page.getByText('Write a form here…').click();
    await panel().getByText('Choose the function whose form is to stand at the selected cell.').waitFor();
    const search = panel().getByRole('searchbox');
    await expect
      .poll(() => search.evaluate((one) => one === document.activeElement), { timeout: PATIENCE })
      .toBe(true);
    await search.fill('SEAT.FORCE');
    await panel()
      .getByRole('button', { name: /^SEAT\.FORCE/ })
      .click();
    await panel().getByRole('button', { name: 'Write a form at the selected cell' }).click();
    await panel()
      .getByRole('button', { name: /^Write it at / })
      .click();
    await panel().getByText('Undo takes all of it back.').waitFor();
    await page.screenshot({ path: 'reports/form.png' });
    const written = await tab.savedWorkbook();
    expect(cellOf(written, 'Sheet1', 'D9')?.value).toBe('mine');
    const [result] =
      written.sheets[0]?.cells.filter(({ formula }) => formula?.startsWith('MOLD.SEAT.FORCE(')) ?? [];
    expect(result?.value).toBeGreaterThan(0);
    expect(written.names.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['push', 'draft', 'friction']),
    );
    await undo();
    await expect
      .poll(
        async () => (await tab.savedWorkbook()).sheets[0]?.cells.filter(({ value }) => value !== null).length,
        {
          timeout: PATIENCE,
        },
      )
      .toBe(1);
  },
  PATIENCE,
);

it('gives the browser nothing to complain of', () => {
  expect(desk.troubles).toEqual([]);
});
