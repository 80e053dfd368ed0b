import type { AddressInfo } from 'node:net';
import { fileURLToPath } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { staticServer } from '../../src/cli/staticServer';
import { parseCell } from '../../src/cells/address';
import { installStandIn, type StandIn, type Step } from '../excel/standIn/install';
import { StandInWorkbook } from '../excel/standIn/workbook';
import { slow } from './desk';
import { launch, leave } from './launch';

const folder = fileURLToPath(new URL('../../dist/excel', import.meta.url));
const OFFICE_JS = 'https://appsforoffice.microsoft.com/lib/1/hosted/office.js';

/** The built panel of the add-in in a Chromium, with a stand-in for Excel behind it. */
export class ExcelDesk {
  readonly workbook = new StandInWorkbook();
  /** What went wrong: errors of scripts and on the console, and requests to elsewhere than the add-in's server. */
  readonly troubles: string[] = [];

  private constructor(
    readonly page: Page,
    private readonly browser: Browser,
    private readonly stop: () => void,
  ) {}

  static async open(
    width: number,
    samples: Readonly<Record<string, Buffer>>,
    where:
      | 'Excel'
      | 'a shared workbook in Excel'
      | 'first run in Excel'
      | 'plain browser'
      | 'no office.js' = 'Excel',
  ): Promise<ExcelDesk> {
    const server = staticServer(folder);
    await new Promise<void>((resolve) => server.listen(0, 'localhost', resolve));
    const address = `http://localhost:${(server.address() as AddressInfo).port}`;
    const browser = await launch();
    const page = await browser.newPage({ viewport: { width, height: 800 } });
    const desk = new ExcelDesk(page, browser, () => server.close());
    page.on('pageerror', (error) => desk.troubles.push(`error: ${error.message}`));
    page.on('console', (message) => {
      if (message.type() === 'error') desk.troubles.push(`console: ${message.text()}`);
    });
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(address) && !/^(data|blob):/.test(url) && url !== OFFICE_JS) {
        desk.troubles.push(`request: ${url}`);
      }
    });
    // The stand-in comes before any script of the page, as office.js does.
    await page.route(OFFICE_JS, (route) => route.fulfill({ contentType: 'text/javascript', body: '' }));
    await page.route('**/samples/*', (route) => {
      const name = route.request().url().split('/').at(-1) ?? '';
      if (name === 'index.json') return route.fulfill({ json: Object.keys(samples) });
      const body = samples[name];
      return body ? route.fulfill({ body }) : route.abort();
    });
    await page.exposeFunction('sendToExcel', async (steps: Step[]) => {
      const reply = await desk.workbook.execute(steps);
      if (steps.some(({ op }) => op === 'set')) void desk.fire('onCalculated');
      return reply;
    });
    if (where === 'Excel' || where === 'a shared workbook in Excel')
      await page.addInitScript("localStorage.setItem('moldsheet.seen.first steps', 'yes')");
    if (where !== 'no office.js') {
      const host = where === 'plain browser' ? null : 'Excel';
      await page.addInitScript(
        `window.standIn = (${installStandIn.toString()})(window, window.sendToExcel, ${JSON.stringify(host)});`,
      );
    }
    if (where === 'a shared workbook in Excel')
      await page.addInitScript("Office.context.document.url = 'https://example.com/molds/seat.xlsx'");
    await slow(page);
    await page.goto(`${address}/taskpane.html`);
    return desk;
  }

  async close(): Promise<void> {
    await leave(this.browser);
    this.stop();
  }

  /** A person selects cells in the sheet. */
  async select(sheet: string, address: string): Promise<void> {
    this.workbook.select(sheet, address);
    await this.fire('onSelectionChanged');
  }

  /** A person types a value into a cell. */
  async type(sheet: string, address: string, value: number): Promise<void> {
    const { row, column } = placeAt(address);
    this.workbook.sheet(sheet).type(row, column, value);
    await this.workbook.execute([]);
    await this.fire('onChanged');
  }

  /** What a cell shows. */
  async show(sheet: string, address: string): Promise<unknown> {
    const { row, column } = placeAt(address);
    await this.workbook.execute([]);
    return this.workbook.sheet(sheet).getRangeByIndexes(row, column, 1, 1).values[0]?.[0];
  }

  private async fire(event: string): Promise<void> {
    await this.page.evaluate((name) => {
      (window as unknown as { standIn: StandIn }).standIn.fire(name);
    }, event);
  }

  /** Office is set to another theme; no event tells of it. */
  async setTheme(isDarkTheme: boolean): Promise<void> {
    await this.page.evaluate((dark) => {
      (window as unknown as { standIn: StandIn }).standIn.setTheme({ isDarkTheme: dark });
    }, isDarkTheme);
  }

  /** A click on the ribbon. */
  async click(command: string): Promise<void> {
    await this.page.evaluate(
      (name) => (window as unknown as { standIn: StandIn }).standIn.click(name),
      command,
    );
  }
}

const placeAt = (address: string): { row: number; column: number } => {
  const place = parseCell(address);
  if (!place) throw new Error(`${address} is no cell`);
  return place;
};
