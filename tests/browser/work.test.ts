import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { FIRST_SAMPLE } from '../../src/page/samples';
import { cellAddress } from '../../src/cells/address';
import { type Cell } from '../../src/package/model';
import { readWorkbook } from '../../src/package';
import { atRest, Desk, type Tab } from './desk';

/** The sheet that a newcomer sees first; its cells are found by what they hold, as rows come and go. */
const sample = readWorkbook(
  new Uint8Array(readFileSync(fileURLToPath(new URL(`../../samples/${FIRST_SAMPLE}`, import.meta.url)))),
  worksheetFunctions.map(({ id }) => id),
);
function cellWith(formula: RegExp): Cell & { readonly formula: string } {
  const found = sample.sheets[0]?.cells.find(
    (cell) => cell.formula !== undefined && formula.test(cell.formula),
  );
  if (found?.formula === undefined) throw new Error(`The sample has no formula like ${formula.source}`);
  return { ...found, formula: found.formula };
}
const addressOf = ({ row, column }: Pick<Cell, 'row' | 'column'>): string => cellAddress(row, column);
const argumentsOf = (formula: string): string[] => (/\((.*?)\)/.exec(formula)?.[1] ?? '').split(/,\s*/);

const sinkCell = cellWith(/^MOLD\.SEAT\.SINK\(/);
const SINK = addressOf(sinkCell);
const [PUSH, , , RADIUS, , , METAL] = argumentsOf(sinkCell.formula) as [
  string, string, string, string, string, string, string,
]; // prettier-ignore
const pairCell = cellWith(/^MOLD\.SEAT\.SINK\(.*\) *- *MOLD\.SEAT\.SINK\(/);
const spilledCell = cellWith(/^MOLD\.SEAT\.PUSHOUT\(/);

let desk: Desk;
let tab: Tab;
let page: Page;

beforeAll(async () => {
  desk = await Desk.open();
  tab = await desk.tab(await desk.newcomer());
  page = tab.page;
  await page.getByRole('tab', { name: 'Work' }).click();
});
afterAll(async () => {
  await desk.close();
});

const work = () => page.getByRole('region', { name: 'Work' });
const list = (name: string) => work().getByRole('list', { name });

/** Violations in the panel and its dialogs; the grid is a library's. */
async function violations(on: Page): Promise<string[]> {
  await on.evaluate(axe.source);
  return on.evaluate(async () => {
    const { axe: checker } = window as unknown as { axe: typeof axe };
    const { violations: found } = await checker.run({
      exclude: [['main[aria-label="Workbook"]'], ['[data-tabster-dummy]']],
    });
    return found.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary ?? ''}`),
    );
  });
}

describe('the work of a cell', () => {
  it('says what to do while no cell of ours is selected', async () => {
    await tab.select('A1');
    await work().getByText('Select a cell with a MOLD formula').waitFor();
  });

  it('shows the equation typeset, the inputs with their cells, the range, the sources and a picture', async () => {
    await tab.select(SINK);
    await work().getByRole('heading', { name: 'MOLD.SEAT.SINK' }).waitFor();
    await work().locator('.katex').first().waitFor();
    const inputs = await list('Inputs').getByRole('listitem').allInnerTexts();
    expect(inputs.find((text) => text.includes('push'))).toMatch(new RegExp(`lbf[\\s\\S]*from ${PUSH}$`));
    expect(inputs.find((text) => text.includes('insertMetal'))).toMatch(
      new RegExp(`P20[\\s\\S]*from ${METAL}$`),
    );
    // The steps in TeX, as KaTeX keeps them for readers of mathematics.
    const tex = await work().locator('annotation').allTextContents();
    expect(tex).toContain('\\displaystyle \\phi = \\arctan\\left(\\mu\\right)');
    expect(tex.some((text) => /\\arctan\\left\(0\.15\\right\) = \{?8\.53077/.test(text))).toBe(true);
    await work().getByRole('img', { name: 'Section of the tapered insert in its pocket' }).waitFor();
    expect(await work().innerText()).toMatch(/Derived\s*Lamé/);
    expect(await work().innerText()).toContain('Holds with these values.');
    // What the formula gives stands in the cell; the view works it out anew from the inputs.
    await work()
      .getByText(/0\.00\d+ in/)
      .first()
      .waitFor();
  });

  it('follows an input, and the picture with it', async () => {
    const label = () => work().locator('svg text', { hasText: 'Sink z =' }).textContent();
    const before = await label();
    // The sheet keeps what is entered in the column two to the left of the value that formulas read.
    const entry = RADIUS.replace('D', 'B');
    await tab.type(entry, '0.6');
    await tab.select(SINK);
    await expect.poll(label).not.toBe(before);
    await tab.type(entry, '0.4');
    await tab.select(SINK);
    await expect.poll(label).toBe(before);
  });

  it('lets choose between the functions of one formula', async () => {
    await tab.select(addressOf(pairCell));
    const choice = work().getByLabel('2 functions in this formula');
    const [first = '', second = ''] = pairCell.formula.split(/ - /).map((call) => argumentsOf(call)[0]);
    await expect.poll(() => list('Inputs').innerText()).toContain(`from ${first}`);
    expect(await list('Inputs').innerText()).not.toContain(`from ${second}`);
    await choice.selectOption('1');
    await expect.poll(() => list('Inputs').innerText()).toContain(`from ${second}`);
  });

  it('shows the place of a spilled range that is selected, and works out an argument that is an expression', async () => {
    await tab.select(addressOf({ ...spilledCell, row: spilledCell.row + 1 }));
    await work()
      .getByText(`filled from ${addressOf(spilledCell)}`)
      .waitFor();
    await expect
      .poll(() => list('Inputs').innerText())
      .toContain(`from ${argumentsOf(spilledCell.formula)[0] ?? ''}`);
    // A twentieth of the stroke of 0.4 in.
    expect(await list('Inputs').innerText()).toMatch(/lift\s+0\.02 in/);
  });

  it('draws the tornado of a TRY.SWING', async () => {
    await tab.type(
      'T1',
      '=MOLD.TRY.SWING("CLAMP.FORCE",{"projectedArea",900,800,1000;"cavityPressure",25,20,30;"margin",1.2,1.1,1.3},"mm")',
    );
    await tab.isAt('T2');
    await tab.select('T1');
    await work()
      .getByRole('img', { name: /^Tornado chart\. cavityPressure: 21600 at its low, 32400 at its high\./ })
      .waitFor();
  });

  it('says why a function refuses, and how a left-out input is taken', async () => {
    await tab.type('I7', '=MOLD.SEAT.FORCE(100,95,0.15)');
    await tab.select('I7');
    await work()
      .getByText(/draft is 95 deg/)
      .waitFor();
    await tab.type('I7', '=MOLD.SEAT.RELEASE("2 kN",5,0.15,,"mm")');
    await tab.select('I7');
    await expect.poll(() => list('Inputs').innerText()).toContain('left out: as seatFriction');
    expect(await list('Inputs').innerText()).toContain('typed in the formula');
  });

  it('says what is out of range', async () => {
    await tab.type('I8', '=MOLD.SPRING.PRELOAD(8,30,32,,"mm")');
    await tab.select('I8');
    await work().getByText('Out of range: The spring is not longer than its pocket').waitFor();
    await work().getByRole('img', { name: 'The spring at its lengths' }).waitFor();
  });

  it('leads to the help of the function, on a page of its own', async () => {
    const opening = page.context().waitForEvent('page');
    await work().getByRole('link', { name: 'Help of SPRING.PRELOAD' }).click();
    const help = await opening;
    await help.getByRole('heading', { name: 'MOLD.SPRING.PRELOAD' }).waitFor();
    expect(await violations(help)).toEqual([]);
    await help.screenshot({ path: 'reports/help-spring-preload.png', fullPage: true });
    await help.getByRole('link', { name: 'All functions' }).click();
    await help.getByLabel('Search by the words of the shop').fill('witness step');
    await help.getByText(/^\d+ found$/).waitFor();
    expect(await help.getByRole('link', { name: 'MOLD.SEAT.STEP' }).isVisible()).toBe(true);
    expect(await help.getByRole('link', { name: 'MOLD.COST.PART' }).isVisible()).toBe(false);
    expect(await violations(help)).toEqual([]);
    await help.close();
  });
});

describe.each(['light', 'dark'] as const)('its look in %s', (colorScheme) => {
  it.each([320, 450])('breaks no rule of accessibility and clips nothing at %i pixels', async (width) => {
    await page.emulateMedia({ colorScheme });
    await tab.select(SINK);
    await work().getByRole('heading', { name: 'MOLD.SEAT.SINK' }).waitFor();
    const panel = page.getByRole('complementary', { name: 'Functions' });
    await panel.evaluate((element, wanted) => {
      (element as HTMLElement).style.width = `${wanted}px`;
    }, width);
    await page.setViewportSize({ width: 1280, height: 2400 });
    await atRest(page);
    expect(await work().evaluate((element) => element.scrollWidth - element.clientWidth)).toBeLessThanOrEqual(
      0,
    );
    expect(await violations(page)).toEqual([]);
    await panel.screenshot({ path: `reports/work-${width}-${colorScheme}.png` });
  });
});

it('gives the browser nothing to complain of', () => {
  expect(desk.troubles).toEqual([]);
});
