import { spawnSync } from 'node:child_process';
import { mkdtempSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launch, leave } from './launch';

const file = join(mkdtempSync(join(tmpdir(), 'moldsheet-page-')), 'insert.html');
const troubles: string[] = [];
let browser: Browser;

beforeAll(async () => {
  const { status, stderr } = spawnSync(
    process.execPath,
    [resolve('dist/moldsheet.cjs'), 'share', 'samples/push-out-insert.xlsx', '-o', file, '--as', 'page'],
    { encoding: 'utf8' },
  );
  expect([status, stderr]).toEqual([0, '']);
  browser = await launch();
});
afterAll(async () => {
  await leave(browser);
});

/** The page as somebody opens it from a mail. */
async function opened(width: number, js = true): Promise<Page> {
  const context = await browser.newContext({ viewport: { width, height: 800 }, javaScriptEnabled: js });
  const page = await context.newPage();
  page.on('pageerror', ({ message }) => troubles.push(message));
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) troubles.push(message.text());
  });
  page.on('request', (request) => {
    if (request.url() !== pathToFileURL(file).href && !request.url().startsWith('data:'))
      troubles.push(`request: ${request.url()}`);
  });
  await page.goto(pathToFileURL(file).href);
  if (js) await page.getByText('Calculated here').waitFor();
  return page;
}

describe('the one-file page of the first sample', () => {
  it('is small enough for any mail', () => {
    expect(statSync(file).size).toBeLessThanOrEqual(700_000);
  });

  it.each([1280, 390])('follows an input, shows the work and puts back, %i px wide', async (width) => {
    const page = await opened(width);
    const shown = (place: string) => page.locator(`section.front [data-cell="${place}"]`);
    const holding = await shown('21 3').innerText();
    // The air pressure of the press, halved: the push of the melt goes down with it.
    await shown('9 1').click();
    await page.getByLabel('Value in psi').fill('55');
    await page.keyboard.press('Enter');
    await page.getByText('Changed here and not saved: Insert!B10 110 → 55').waitFor();
    const force = Number((await shown('21 3').innerText()).replace(',', ''));
    expect(force).toBeLessThan(Number(holding.replace(',', '')) * 0.9);

    await shown('31 3').click();
    await page.getByRole('heading', { name: 'MOLD.SEAT.FORCE' }).waitFor();
    expect(await page.locator('#cell math').count()).toBeGreaterThan(3);
    await page.getByRole('button', { name: 'Close' }).click();

    // Units come from a list and all follows.
    await shown('3 3').click();
    await page.getByLabel('Value').selectOption('mm');
    await page.getByText('Insert!D4 in → mm').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);

    await page.emulateMedia({ media: 'print' });
    const paper = page.locator('#paper');
    await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
    await paper.getByText('Inputs changed since the workbook').waitFor();
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    await page.emulateMedia({ media: 'screen' });

    await page.getByRole('button', { name: /inputs back/ }).click();
    await page.getByText('Calculated here, with the inputs of the workbook').waitFor();
    expect(await shown('21 3').innerText()).toBe(holding);
    await page.context().close();
  });

  it('can be read where scripts are off, and says of when its values are', async () => {
    const page = await opened(390, false);
    await page.getByText('The values are those of').waitFor();
    expect(await page.locator('td', { hasText: 'Push of the melt' }).first().isVisible()).toBe(true);
    await page.context().close();
  });

  it('says so where the browser cannot unpack its program', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    await page.addInitScript(() => {
      Reflect.deleteProperty(window, 'DecompressionStream');
    });
    await page.goto(pathToFileURL(file).href);
    await page.getByText('This browser is too old to calculate here').waitFor();
    await context.close();
  });

  it('asks nobody for anything, and does nothing that a browser complains of', () => {
    expect(troubles).toEqual([]);
  });
});
