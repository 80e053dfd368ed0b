import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { staticServer } from '../../src/cli/staticServer';
import { cellOf, Desk, LOADING, slow, Tab } from './desk';
import { launch, leave } from './launch';

/** Whole pages are loaded several times over, also where the machine has much else to do. */
vi.setConfig({ testTimeout: 240_000 });

describe('the page without a network', () => {
  const folder = mkdtempSync(join(tmpdir(), 'moldsheet-app-'));
  const server = staticServer(folder);
  const worker = join(folder, 'worker.js');
  let browser: Browser;
  let page: Page;
  let tab: Tab;

  beforeAll(async () => {
    cpSync('dist/page', folder, { recursive: true });
    await new Promise<void>((resolve) => server.listen(0, 'localhost', resolve));
    browser = await launch();
    page = await browser.newPage();
    page.setDefaultNavigationTimeout(LOADING);
    await page.goto(`http://localhost:${(server.address() as AddressInfo).port}`);
    tab = new Tab(page);
    await tab.ready();
    await page.evaluate(() => navigator.serviceWorker.ready);
    // All of its files are fetched, also where the machine has much else to do.
  }, 300_000);
  afterAll(async () => {
    await leave(browser);
    server.close();
    rmSync(folder, { recursive: true });
  });

  it('opens, calculates, and has its help and samples', async () => {
    await page.context().setOffline(true);
    await page.reload();
    await tab.ready();
    await tab.type('B10', '100');
    expect(cellOf(await tab.savedWorkbook(), 'Insert', 'B10')?.value).toBe(100);
    const found = ['help/index.html', 'samples/plates.xlsx', 'one-page.html'].map((file) =>
      page.evaluate(async (address) => (await fetch(address)).ok, file),
    );
    expect(await Promise.all(found)).toEqual([true, true, true]);
    await page.context().setOffline(false);
  });

  it('says when a newer version is there, and changes to it when asked, with the work as it was', async () => {
    writeFileSync(worker, `${readFileSync(worker, 'utf8')}\n// newer`);
    await page.reload();
    await page.getByText('A newer version of Moldsheet is there').waitFor();
    await tab.ready();
    const loaded = page.waitForEvent('load');
    await page.getByRole('button', { name: 'Load it' }).click();
    await loaded;
    await tab.ready();
    expect(await page.getByText('A newer version of Moldsheet is there').count()).toBe(0);
    expect(cellOf(await tab.savedWorkbook(), 'Insert', 'B10')?.value).toBe(100);
  });

  it('takes no version of which a file is not the one that was built', async () => {
    const index = join(folder, 'index.html');
    writeFileSync(index, `${readFileSync(index, 'utf8')}<!-- of another build -->`);
    // Everything is asked for again, as in a build whose files all changed.
    writeFileSync(worker, readFileSync(worker, 'utf8').replaceAll('revision:"', 'revision:"2'));
    const end = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.ready;
      return new Promise<string>((resolve) => {
        registration.addEventListener('updatefound', () => {
          const next = registration.installing;
          next?.addEventListener('statechange', () => {
            if (next.state !== 'installing') resolve(next.state);
          });
        });
        void registration.update();
      });
    });
    expect(end).toBe('redundant');
    await page.reload();
    await tab.ready();
    expect(await page.content()).not.toContain('of another build');
  });
});

describe('the page while it opens', () => {
  let desk: Desk;

  async function patientPage(context: BrowserContext): Promise<Page> {
    const page = await context.newPage();
    page.setDefaultTimeout(LOADING);
    await slow(page);
    return page;
  }

  beforeAll(async () => {
    desk = await Desk.open();
  });
  afterAll(async () => {
    await desk.close();
  });

  it('says what it is before its scripts come, what did not come, and fetches it when asked again', async () => {
    const page = await patientPage(await desk.newcomer());
    await page.route(/\/page\.[0-9a-f]+\.js$/, (route) => route.abort());
    await page.goto(desk.address);
    await page.getByText('worksheet functions for designing short-run injection molds').waitFor();
    await page.getByText('A part of Moldsheet could not be loaded').waitFor();
    await page.unrouteAll();
    await page.getByRole('button', { name: 'Try again' }).click();
    const tab = new Tab(page);
    await tab.ready();

    await page.getByRole('searchbox', { name: 'Search the functions' }).waitFor();
    await page.route(/\.js$/, (route) => route.abort());
    await page.getByRole('tab', { name: 'Work', exact: true }).click();
    await page.getByText('A part of Moldsheet could not be loaded').waitFor();
    await page.unrouteAll();
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.getByText('could not be loaded').waitFor({ state: 'detached' });
    await tab.type('B10', '100');
    expect(cellOf(await tab.savedWorkbook(), 'Insert', 'B10')?.value).toBe(100);
    await page.context().close();
  });

  it('lets keys that are pressed before the sheet stands go nowhere', async () => {
    const page = await patientPage(await desk.newcomer());
    const errors: string[] = [];
    page.on('pageerror', ({ message }) => errors.push(message));
    let release = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    await page.route(/\/samples\/push-out-insert\.xlsx$/, async (route) => {
      await held;
      await route.continue();
    });
    await page.goto(desk.address, { waitUntil: 'commit' });
    await page.getByRole('button', { name: 'Save' }).waitFor();
    await page.keyboard.type('lost');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Control+s');
    release();
    const tab = new Tab(page);
    await tab.ready();
    await page.getByTitle('Kept in this browser').waitFor();
    expect(await page.getByText('not saved to a file').count()).toBe(0);
    const workbook = await tab.savedWorkbook();
    const texts = workbook.sheets.flatMap(({ cells }) => cells.map(({ value }) => value));
    expect(texts.filter((value) => typeof value === 'string' && /lost/.test(value))).toEqual([]);
    expect(errors).toEqual([]);
    await page.context().close();
  });
});

describe('a workbook in two tabs', () => {
  let desk: Desk;

  beforeAll(async () => {
    desk = await Desk.open();
  });
  afterAll(async () => {
    await desk.close();
  });

  /** The double of a tab, as the browser makes it. */
  async function doubled(page: Page): Promise<Tab> {
    const opening = page.waitForEvent('popup');
    await page.evaluate(() => {
      window.open(location.href);
    });
    const tab = new Tab(await opening);
    await tab.ready();
    await tab.page.getByText('This workbook is open in another tab').first().waitFor();
    return tab;
  }

  it('is only read in the second, goes on there when the first closes, and can be copied', async () => {
    const first = await desk.tab(await desk.newcomer());
    await first.type('B10', '100');
    const second = await doubled(first.page);
    await second.type('B10', '77');
    expect(cellOf(await second.savedWorkbook(), 'Insert', 'B10')?.value).toBe(100);

    await first.page.close();
    await second.page.getByText('The other tab was closed').waitFor();
    await second.type('B10', '77');
    expect(cellOf(await second.savedWorkbook(), 'Insert', 'B10')?.value).toBe(77);

    const third = await doubled(second.page);
    await third.page.getByRole('button', { name: 'Take a copy' }).click();
    await third.type('B10', '66');
    expect(cellOf(await third.savedWorkbook(), 'Insert', 'B10')?.value).toBe(66);
    expect(cellOf(await second.savedWorkbook(), 'Insert', 'B10')?.value).toBe(77);
    expect(desk.troubles).toEqual([]);
  });

  it('is only read in the second where both opened one file, and shows what the first made of it', async () => {
    const context = await desk.newcomer();
    const first = await desk.tab(context);
    const { path } = await first.save();
    const file = {
      name: 'seat.xlsx',
      mimeType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
      buffer: readFileSync(path),
    };
    await first.open(file);
    await first.page.getByText('seat.xlsx', { exact: true }).waitFor();
    await first.ready();
    await first.type('B10', '55');
    await first.page.getByText('not saved to a file').waitFor();
    await first.kept();

    const second = await desk.tab(context);
    await second.open(file);
    await second.page.getByText('This workbook is open in another tab').first().waitFor();
    expect(cellOf(await second.savedWorkbook(), 'Insert', 'B10')?.value).toBe(55);
    await second.page.getByRole('button', { name: 'Take a copy' }).click();
    await second.type('B10', '66');
    expect(cellOf(await second.savedWorkbook(), 'Insert', 'B10')?.value).toBe(66);
    expect(cellOf(await first.savedWorkbook(), 'Insert', 'B10')?.value).toBe(55);
    await context.close();
  });

  it('on a phone shows the sheet whole, the panel from below, and buttons as large as a finger needs', async () => {
    const context = await desk.newcomer({ viewport: { width: 390, height: 844 }, hasTouch: true });
    const { page } = await desk.tab(context);
    const panel = page.getByRole('complementary', { name: 'Functions' });
    expect(await panel.count()).toBe(0);
    await page.getByRole('button', { name: 'Functions', exact: true }).tap();
    const box = await panel.boundingBox();
    expect(box?.width).toBe(390);
    expect(box?.y).toBeGreaterThan(250);
    await page.getByRole('tab', { name: 'Work' }).tap();
    const sizes = await page
      .locator('header:has(h1) button, aside [role="tab"]')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect()).filter(({ width }) => width > 0));
    expect(sizes.filter(({ width, height }) => Math.min(width, height) < 24)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await context.close();
  });
});
