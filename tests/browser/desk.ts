import { readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { staticServer } from '../../src/cli/staticServer';
import { worksheetFunctions } from '../../src/call/functions';
import { parseCell } from '../../src/cells/address';
import { cellFinder, type Cell, type Workbook } from '../../src/package/model';
import { readWorkbook } from '../../src/package';
import { launch, leave } from './launch';

const root = fileURLToPath(new URL('../..', import.meta.url));
const ids = worksheetFunctions.map(({ id }) => id);

/** On a slow machine a page takes its time. */
export const LOADING = 120_000;

/** The built page, served, in a Chromium. */
export class Desk {
  /** What went wrong in any tab: errors of scripts and on the console, requests to elsewhere. */
  readonly troubles: string[] = [];

  private constructor(
    readonly address: string,
    private readonly browser: Browser,
    private readonly stop: () => void,
  ) {}

  static async open(): Promise<Desk> {
    const server = staticServer(`${root}dist/page`);
    await new Promise<void>((resolve) => server.listen(0, 'localhost', resolve));
    const browser = await launch();
    return new Desk(`http://localhost:${(server.address() as AddressInfo).port}`, browser, () =>
      server.close(),
    );
  }

  async close(): Promise<void> {
    await leave(this.browser);
    this.stop();
  }

  /** A person who has never been here. The page's files are kept in the browser only where that is what is tried. */
  async newcomer(options: BrowserContextOptions = {}): Promise<BrowserContext> {
    const context = await this.browser.newContext({
      viewport: { width: 1280, height: 800 },
      serviceWorkers: 'block',
      ...options,
    });
    context.setDefaultNavigationTimeout(LOADING);
    return context;
  }

  /** A tab with the page, calculated and at rest. */
  async tab(context: BrowserContext): Promise<Tab> {
    const page = await context.newPage();
    page.on('pageerror', (error) => this.troubles.push(`error: ${error.message}`));
    page.on('console', (message) => {
      if (message.type() === 'error') this.troubles.push(`console: ${message.text()}`);
    });
    page.on('request', (request) => {
      const { protocol, origin } = new URL(request.url());
      if (protocol.startsWith('http') && origin !== this.address)
        this.troubles.push(`request: ${request.url()}`);
    });
    await slow(page);
    await page.goto(this.address);
    const tab = new Tab(page);
    await tab.ready();
    return tab;
  }
}

/** With THROTTLE=8 the page has an eighth of the processor: what passes only on a quick machine shows itself. */
export async function slow(page: Page): Promise<void> {
  const rate = Number(process.env['THROTTLE'] ?? 1);
  if (rate <= 1) return;
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate });
}

/** One tab, used as a person does: by keys and clicks, looking at what is saved. */
export class Tab {
  constructor(readonly page: Page) {}

  /** Waits for the workbook to be there. */
  async ready(): Promise<void> {
    await this.page
      .getByRole('button', { name: 'Save', exact: true })
      .and(this.page.locator(':enabled'))
      .waitFor({ timeout: LOADING });
  }

  async select(address: string): Promise<void> {
    const box = this.page.locator('[data-u-comp="defined-name"] input');
    await box.fill(address);
    await box.press('Enter');
  }

  async type(address: string, text: string): Promise<void> {
    await this.select(address);
    await this.page.keyboard.type(text);
    await this.page.keyboard.press('Enter');
  }

  /** Waits until the selection is there: after Enter it moves on once the entry is in. */
  async isAt(address: string): Promise<void> {
    await this.page.waitForFunction(
      (wanted) =>
        document.querySelector<HTMLInputElement>('[data-u-comp="defined-name"] input')?.value === wanted,
      address,
    );
  }

  /** Waits until the browser has all that was done. */
  async kept(): Promise<void> {
    await this.page.getByTitle('Kept in this browser').waitFor();
  }

  async open(file: string | { name: string; mimeType: string; buffer: Buffer }): Promise<void> {
    const [chooser] = await Promise.all([
      this.page.waitForEvent('filechooser'),
      this.page.getByRole('button', { name: 'Open…' }).click(),
    ]);
    await chooser.setFiles(file);
  }

  /** The file that Save gives. */
  async save(): Promise<{ name: string; bytes: Uint8Array; path: string }> {
    const [download] = await Promise.all([
      this.page.waitForEvent('download'),
      this.page.getByRole('button', { name: 'Save' }).click(),
    ]);
    const path = await download.path();
    return { name: download.suggestedFilename(), bytes: readFileSync(path), path };
  }

  async savedWorkbook(): Promise<Workbook> {
    return readWorkbook((await this.save()).bytes, ids);
  }
}

/** A cell of a workbook by its address. */
export function cellOf(workbook: Workbook, sheetName: string, address: string): Cell | undefined {
  const sheet = workbook.sheets.find(({ name }) => name === sheetName);
  const place = parseCell(address);
  return sheet && place && cellFinder(sheet)(place.row, place.column);
}

/** Waits until nothing moves and no color changes any more. */
export async function atRest(page: Page): Promise<void> {
  await page.waitForFunction(
    () => !document.getAnimations().some(({ playState }) => playState === 'running'),
  );
}
