import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { atRest, cellOf, Desk, type Tab } from './desk';

let desk: Desk;
let tab: Tab;
let page: Page;

beforeAll(async () => {
  desk = await Desk.open();
  tab = await desk.tab(await desk.newcomer());
  page = tab.page;
  await page.getByRole('button', { name: 'New' }).click();
  await tab.ready();
});
afterAll(async () => {
  await desk.close();
});

/** Violations in the page's own controls; the grid is a library's. */
async function violations(on: Page): Promise<string[]> {
  await on.evaluate(axe.source);
  return on.evaluate(async () => {
    const { axe: checker } = window as unknown as { axe: typeof axe };
    const { violations: found } = await checker.run({ exclude: [['main'], ['[data-tabster-dummy]']] });
    return found.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary ?? ''}`),
    );
  });
}

const panel = () => page.getByRole('complementary', { name: 'Functions' });

describe('the panel', () => {
  it('finds a function by words, shows its help, and inserts it at the selected cell', async () => {
    await tab.select('C4');
    await panel().getByRole('searchbox').fill('smallest draft lets go');
    await panel()
      .getByRole('button', { name: /^SEAT\.FREEDRAFT/ })
      .click();
    const help = panel().getByRole('article', { name: 'MOLD.SEAT.FREEDRAFT' });
    expect(await help.locator('code').first().textContent()).toBe('=MOLD.SEAT.FREEDRAFT(friction, [units])');
    expect(await help.getByRole('term').allTextContents()).toEqual(['friction', 'unitsoptional']);
    await help.getByRole('button', { name: 'Insert at the selected cell' }).click();
    await page.keyboard.type('0.2)');
    await page.keyboard.press('Enter');
    const cell = cellOf(await tab.savedWorkbook(), 'Sheet1', 'C4');
    expect(cell?.formula).toBe('MOLD.SEAT.FREEDRAFT(0.2)');
    // arctan 0.2 in degrees, from a table of tangents
    expect(cell?.value).toBeCloseTo(11.3099325, 6);
  });

  it('keeps the search while help is read', async () => {
    await panel().getByRole('button', { name: 'All functions' }).click();
    expect(await panel().getByRole('searchbox').inputValue()).toBe('smallest draft lets go');
  });

  it('says when a search means nothing', async () => {
    await panel().getByRole('searchbox').fill('zzz');
    await panel().getByText('No function speaks of this').waitFor();
    await panel().getByRole('searchbox').fill('');
  });

  it('leads from a cell to the help of the function in it', async () => {
    await tab.select('C4');
    await panel().getByRole('button', { name: 'MOLD.SEAT.FREEDRAFT', exact: true }).click();
    await panel().getByRole('article', { name: 'MOLD.SEAT.FREEDRAFT' }).waitFor();
    await panel().getByRole('button', { name: 'All functions' }).click();
  });

  it('is used by keys: one stop for the list, arrows inside', async () => {
    await panel().getByRole('searchbox').focus();
    await page.keyboard.press('Tab');
    await page.keyboard.press('ArrowDown');
    const second = panel().getByRole('region', { name: 'SEAT' }).getByRole('button').nth(1);
    expect(await second.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.keyboard.press('Enter');
    await panel().getByRole('article').waitFor();
    await panel().getByRole('button', { name: 'All functions' }).click();
  });

  it('goes away and comes back', async () => {
    await page.getByRole('button', { name: 'Functions', exact: true }).click();
    expect(await panel().count()).toBe(0);
    await page.getByRole('button', { name: 'Functions', exact: true }).click();
    await panel().waitFor();
  });
});

describe('the equation tab', () => {
  const editor = () => panel().getByRole('region', { name: 'Equation' });
  const fill = (label: string, text: string) => editor().getByLabel(label, { exact: true }).fill(text);

  it('checks an equation while it is typed, and writes it where nothing stands yet', async () => {
    await panel().getByRole('tab', { name: 'Equation' }).click();
    await fill('Equation', 'F/(pi/4*d^2)');
    await fill('Value of F', '500');
    await fill('Unit of F', 'lbf');
    await fill('Unit of d', 'in');
    await editor().getByText('name its unit, such as').waitFor();
    await fill('Unit of the result', 'psi');
    await editor().getByText('The units fit. Without a value: d.').waitFor();
    await fill('Value of d', '0.25');
    await fill('Name of the result', 'Stress');
    await atRest(page);
    expect(await violations(page)).toEqual([]);
    await page.screenshot({ path: 'reports/equation.png' });

    const write = editor().getByRole('button', { name: 'Write at the selected cell' });
    await tab.select('C3');
    await write.click();
    await editor().getByText('C4 is filled.').waitFor();
    await tab.select('E10');
    await write.click();
    await editor().getByText('Written from E10').waitFor();
    const saved = await tab.savedWorkbook();
    // 500 lbf over a round of 1/4 in
    expect(cellOf(saved, 'Sheet1', 'F13')?.value).toBeCloseTo(10185.916, 3);
    expect(cellOf(saved, 'Sheet1', 'F10')?.value).toBe('F/(pi/4*d^2)');
    await panel().getByRole('tab', { name: 'Functions' }).click();
  });
});

describe('its controls', () => {
  it.each(['light', 'dark'] as const)('break no rule of accessibility in %s', async (colorScheme) => {
    await page.emulateMedia({ colorScheme });
    await atRest(page);
    expect(await violations(page)).toEqual([]);
    await tab.type('C6', '=MOLD.SEAT.FREEDRAFT("wet")');
    await tab.select('C6');
    await page.getByRole('alert').waitFor();
    await panel().getByRole('button', { name: 'MOLD.SEAT.FREEDRAFT', exact: true }).click();
    expect(await violations(page)).toEqual([]);
    await panel().getByRole('button', { name: 'All functions' }).click();
  });

  it('give the browser nothing to complain of', () => {
    expect(desk.troubles).toEqual([]);
  });
});
