/** Pictures of the guide beside the live page that shows the same sheet. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { BrowserContext, Page } from 'playwright-core';
import { guideDesign } from '../../scripts/help/guide/pages';
import { saveWorkbook } from '../../src/package';
import { Desk } from './desk';
import { differences, type PicturedCell } from './pictures';

/** A design of all sections is opened and drawn at full length: a slow machine takes its time, in ms. */
const PATIENCE = 300_000;
/** Pictures of the rows that begin below the frozen ones, one after another. */
const PICTURES = ['1.svg', '2.svg', '3.svg'];
/** So tall that all their rows are in view at once. */
const VIEW = { width: 1500, height: 6400 };

// Kept for the whole run of everything: it draws six thousand pixels of sheet.
describe.runIf(process.env['REQUIRE_BROWSER'])('the guide', () => {
  let desk: Desk;
  let context: BrowserContext;
  let live: Page;

  beforeAll(async () => {
    desk = await Desk.open();
    context = await desk.newcomer({ viewport: VIEW });
    const tab = await desk.tab(context);
    live = tab.page;
    live.setDefaultTimeout(PATIENCE);
    await tab.open({
      name: 'cap.xlsx',
      mimeType: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
      buffer: Buffer.from(saveWorkbook(await guideDesign(), [])),
    });
    await live.waitForFunction(() => document.title.includes('cap.xlsx'));
    await tab.ready();
    // The selection is drawn over the title, which is in no picture.
    await tab.select('A1');
  }, PATIENCE);
  afterAll(async () => {
    await desk.close();
  });

  it.each(PICTURES)(
    '%s has the texts, places and colors that the page shows',
    async (name) => {
      const picture = await context.newPage();
      await picture.goto(`${desk.address}/help/guide/${name}`);
      const cells: PicturedCell[] = await picture.evaluate(() =>
        [...document.querySelectorAll('td')].map((cell) => {
          const { x, y, width, height } = cell.getBoundingClientRect();
          return { text: cell.textContent, x, y, width, height };
        }),
      );
      const drawn = (await picture.screenshot({ timeout: PATIENCE })).toString('base64');
      expect(cells.length).toBeGreaterThan(100);
      expect(cells.filter(({ text }) => text !== '').length).toBeGreaterThan(80);
      // Until the page has drawn all of it.
      await expect
        .poll(
          async () => {
            const shown = (await live.screenshot({ timeout: PATIENCE })).toString('base64');
            return picture.evaluate(differences, { drawn, shown, cells });
          },
          { timeout: PATIENCE / 3, interval: 2000 },
        )
        .toEqual([]);
      await picture.close();
    },
    PATIENCE,
  );
});
