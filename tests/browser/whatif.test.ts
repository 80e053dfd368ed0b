import axe from 'axe-core';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { cellAddress } from '../../src/cells/address';
import { readWorkbook } from '../../src/package';
import { atRest, cellOf, Desk, type Tab } from './desk';

const SAMPLE = fileURLToPath(new URL('../../samples/push-out-insert.xlsx', import.meta.url));
/** Where the pictures go, if anybody wants to look at them. */
const PICTURES = process.env['PICTURES'];

const opened = readWorkbook(
  readFileSync(SAMPLE),
  worksheetFunctions.map(({ id }) => id),
);
const [insert] = opened.sheets;
const sheetName = insert?.name ?? '';

/** The cell of the sample in a column of the row with this label. */
function cell(label: string, column: 'B' | 'D'): string {
  const row = insert?.cells.find((one) => one.column === 0 && one.value === label)?.row;
  if (row === undefined) throw new Error(`The sample has no row ${label}.`);
  return cellAddress(row, column === 'B' ? 1 : 3);
}

const DRAFT = cell('Draft per side', 'B');
const FRICTION = cell('Friction going in', 'B');
const PUSH = cell('Push that breaks it loose', 'D');
const SINK = cell('Sink under injection', 'D');

let desk: Desk;
let context: BrowserContext;
let tab: Tab;
let page: Page;

beforeAll(async () => {
  desk = await Desk.open();
  context = await desk.newcomer();
  tab = await desk.tab(context);
  page = tab.page;
  await tab.open(SAMPLE);
  await tab.ready();
  await panelTab('What if').click();
}, 120_000);
afterAll(async () => {
  await desk.close();
});

const panelTab = (name: string) => page.getByRole('complementary').getByRole('tab', { name });
const whatIf = () => page.getByRole('region', { name: 'What if' });
const outcome = () => whatIf().getByRole('region', { name: 'Outcome', exact: true });
const run = () => whatIf().getByRole('button', { name: /^Run(?! again)/ });

const picture = async (name: string) => {
  if (PICTURES !== undefined) await page.screenshot({ path: `${PICTURES}/${name}.png` });
};

/** Milliseconds from the next click until so many charts are on the screen, by the page's own clock: the driver's way is none of it. */
const waitedForCharts = (many: number): Promise<number> =>
  page.evaluate(
    (count) =>
      new Promise<number>((resolve) => {
        const clicked = ({ timeStamp }: MouseEvent) => {
          new MutationObserver((_, observer) => {
            if (document.querySelectorAll('[aria-label="Outcome"] [role="img"]:has(svg)').length < count)
              return;
            observer.disconnect();
            requestAnimationFrame(() =>
              requestAnimationFrame(() => {
                resolve(performance.now() - timeStamp);
              }),
            );
          }).observe(document.body, { childList: true, subtree: true });
        };
        addEventListener('click', clicked, { once: true, capture: true });
      }),
    many,
  );

/** Of the panel; the grid and the sentinels of the focus are libraries'. */
async function violations(): Promise<string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe: checker } = window as unknown as { axe: typeof axe };
    const { violations: found } = await checker.run({ exclude: [['main'], ['[data-tabster-dummy]']] });
    return found.flatMap(({ id, nodes }) =>
      nodes.map(({ html, failureSummary }) => `${id}: ${html} ${failureSummary ?? ''}`),
    );
  });
}

describe('what if, in the panel', () => {
  it('takes cells from the selection and says what they are', async () => {
    await picture('empty');
    await tab.select(DRAFT);
    await whatIf().getByRole('button', { name: 'Vary the selected cell' }).click();
    await whatIf()
      .getByText(/^Draft per side: 5 deg now$/)
      .waitFor();
    await tab.select(PUSH);
    await whatIf().getByRole('button', { name: 'Add the selected cells' }).click();
    await tab.select(SINK);
    await whatIf().getByRole('button', { name: 'Add the selected cells' }).click();
    await whatIf().getByRole('listitem').filter({ hasText: 'Sink under injection, in' }).waitFor();
    expect(await whatIf().getByLabel('Cells to read').inputValue()).toBe(
      `${sheetName}!${PUSH}, ${sheetName}!${SINK}`,
    );
  });

  it('counts the variations, and says what is wrong with the values', async () => {
    await whatIf().getByRole('textbox', { name: 'Values' }).fill('3:22');
    await whatIf().getByText('has no step').waitFor();
    await whatIf().getByRole('textbox', { name: 'Values' }).fill('3:22:1');
    await whatIf().getByRole('button', { name: 'Run 20 variations' }).waitFor();
  });

  it('runs 200 variations of the design sheet in seconds', async () => {
    await whatIf().getByRole('button', { name: 'Vary a second cell' }).click();
    await whatIf().getByLabel('Cell to vary 2').fill(`${sheetName}!${FRICTION}`);
    await whatIf().getByLabel('Values 2').fill('0.1:0.28:0.02');
    const ready = whatIf().getByRole('button', { name: 'Run 200 variations' });
    await ready.waitFor();
    const waited = waitedForCharts(2);
    await ready.click();
    await outcome().getByRole('heading', { name: '200 variations' }).waitFor();
    const took = await waited;
    console.log(`200 variations in the page: ${took.toFixed(0)} ms`);
    // The goal is 0.5 s on an idle machine; a busy one may take its time.
    expect(took).toBeLessThan(30_000);
    expect(await outcome().locator('figcaption').count()).toBe(2);
    const table = outcome().getByRole('region', { name: 'Table of the outcome' });
    expect(await table.locator('tbody tr').count()).toBe(200);
    // A matrix a result: 20 drafts down, 10 frictions across.
    const matrix = outcome()
      .getByRole('region', { name: /^Matrix: / })
      .first();
    expect(await matrix.locator('tbody td').count()).toBe(200);
    await atRest(page);
    await picture('outcome');
    await outcome().getByRole('region', { name: 'Table of the outcome' }).scrollIntoViewIfNeeded();
    await picture('outcome-table');
  });

  it('leaves the workbook as it was, on the screen, in the file and in the draft', async () => {
    const saved = await tab.savedWorkbook();
    for (const address of [DRAFT, FRICTION]) {
      expect(cellOf(saved, sheetName, address)?.value).toBe(cellOf(opened, sheetName, address)?.value);
    }
    expect(cellOf(saved, sheetName, SINK)?.formula).toBe(cellOf(opened, sheetName, SINK)?.formula);
    expect(await page.title()).not.toMatch(/^•/);
  });

  it('writes it to a sheet of its own: matrices with their units, charts, and whether it still stands', async () => {
    await outcome().getByRole('button', { name: 'Write to a new sheet' }).click();
    await whatIf().getByText('Written to the sheet What if').waitFor();
    await page.locator('.drawings li').nth(1).waitFor({ state: 'attached' });
    await whatIf().getByText('made for the design as it stands').waitFor();
    await picture('written');
    const saved = await tab.savedWorkbook();
    const text = (address: string) => cellOf(saved, 'What if', address)?.value;
    expect(text('A1')).toMatch(
      /^What if: Draft per side and Friction going in, for Push that breaks it loose/,
    );
    expect(text('A2')).toBe('Made for the design as it stands.');
    expect(text('A7')).toBe('Push that breaks it loose (lbf)');
    expect(text('A8')).toBe('Draft per side (deg) down, Friction going in across');
    expect(typeof text('B9')).toBe('number');
    expect(await page.locator('.drawings li').allTextContents()).toEqual([
      expect.stringMatching(/^Chart: Push that breaks it loose \(lbf\)/),
      expect.stringMatching(/^Chart: Sink under injection \(in\)/),
    ]);
  });

  it('copies the table for another worksheet', async () => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await outcome().getByRole('button', { name: 'Copy' }).click();
    await whatIf().getByText('Copied: 200 lines').waitFor();
    const copied = await page.evaluate(() => navigator.clipboard.readText());
    expect(copied.split(/\r?\n/)[0]).toBe(
      'Draft per side (deg)\tFriction going in\tPush that breaks it loose (lbf)\tSink under injection (in)',
    );
  });

  it('stops at a cancel with what it has, and goes on while other pages are looked at', async () => {
    await whatIf().getByLabel('Values 1').fill('3:22:0.1');
    await whatIf().getByLabel('Values 2').fill('0.1:0.34:0.01');
    await whatIf().getByRole('button', { name: 'Run 4775 variations' }).click();
    await whatIf()
      .getByText(/^[1-9]\d* of 4775 variations$/)
      .waitFor();
    await picture('running');
    await panelTab('Functions').click();
    await panelTab('What if').click();
    await whatIf().getByRole('button', { name: 'Stop' }).click();
    await outcome()
      .getByRole('heading', { name: /^Stopped after \d+ of 4775 variations$/ })
      .waitFor();
  });

  it('leaves no varied workbook behind when the tab is closed in the middle of a run', async () => {
    await run().click();
    await whatIf()
      .getByText(/^[1-9]\d* of 4775 variations$/)
      .waitFor();
    await page.reload();
    await tab.ready();
    const saved = await tab.savedWorkbook();
    expect(cellOf(saved, sheetName, DRAFT)?.value).toBe(5);
    expect(cellOf(saved, sheetName, SINK)?.value).toBeCloseTo(
      Number(cellOf(opened, sheetName, SINK)?.value),
      12,
    );
  }, 60_000);

  it('finds the value at which a cell meets a target, and types it in when asked', async () => {
    await panelTab('What if').click();
    await whatIf().getByRole('tab', { name: 'Solve' }).click();
    await whatIf().getByLabel('Cell to vary').fill(`${sheetName}!${DRAFT}`);
    await whatIf().getByLabel('Between').fill('3..20');
    await whatIf().getByLabel('Cell to bring to the target').fill(`${sheetName}!${SINK}`);
    await whatIf()
      .getByLabel(/^Target/)
      .fill('900000');
    await whatIf().getByRole('button', { name: 'Solve' }).click();
    await whatIf()
      .getByText(/^900000 is not between what the ends give/)
      .waitFor();
    await picture('not-bracketed');
    await whatIf()
      .getByLabel(/^Target/)
      .fill('0.002');
    await whatIf().getByRole('button', { name: 'Solve' }).click();
    await whatIf().getByRole('region', { name: 'Solution' }).getByText('is then 0.002 in').waitFor();
    await picture('solution');
    await whatIf()
      .getByRole('button', { name: `Put it into ${sheetName}!${DRAFT}` })
      .click();
    await whatIf()
      .getByText(/ is .* now\.$/)
      .waitFor();
    expect(cellOf(await tab.savedWorkbook(), sheetName, SINK)?.value).toBeCloseTo(0.002, 9);
  });

  it('refuses to vary a formula until told that values may stand in for it', async () => {
    await whatIf().getByRole('tab', { name: 'Table' }).click();
    await whatIf().getByLabel('Cell to vary').fill(`${sheetName}!${PUSH}`);
    await whatIf().getByRole('textbox', { name: 'Values' }).fill('1,2');
    await whatIf().getByLabel('Cells to read').fill(`${sheetName}!${SINK}`);
    await run().click();
    await whatIf().getByText(`${sheetName}!${PUSH} holds a formula`).waitFor();
    await whatIf().getByRole('checkbox').check();
    await run().click();
    await outcome().getByRole('heading', { name: '2 variations' }).waitFor();
    await whatIf()
      .getByText(/Nothing read changes with/)
      .waitFor();
  });

  it('is used by keys alone', async () => {
    await whatIf().getByRole('textbox', { name: 'Values' }).focus();
    const seen: string[] = [];
    for (let i = 0; i < 6; i++) {
      await page.keyboard.press('Tab');
      seen.push(
        await page.evaluate(
          () =>
            document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? '',
        ),
      );
    }
    expect(seen).toEqual([
      'Vary a second cell',
      '',
      'Cells to read',
      'Add the selected cells',
      'Run 2 variations',
      'Write to a new sheet',
    ]);
  });

  it.each(['light', 'dark'] as const)('breaks no rule of accessibility in %s', async (colorScheme) => {
    await page.emulateMedia({ colorScheme });
    await atRest(page);
    await picture(`axe-${colorScheme}`);
    expect(await violations()).toEqual([]);
    await whatIf().getByRole('tab', { name: 'Solve' }).click();
    expect(await violations()).toEqual([]);
    await whatIf().getByRole('tab', { name: 'Table' }).click();
  });

  it('gives the browser nothing to complain of', () => {
    expect(desk.troubles).toEqual([]);
  });
});
