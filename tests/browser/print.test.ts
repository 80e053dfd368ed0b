import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { columnLetters } from '../../src/cells/address';
import { newWorkbook } from '../../src/package/author';
import { readWorkbook, saveWorkbook } from '../../src/package';
import { run } from '../cli/run';
import { launch, leave } from './launch';

const folder = mkdtempSync(join(tmpdir(), 'moldsheet-print-'));
const hasPdftotext = spawnSync('pdftotext', ['-v']).error === undefined;
let browser: Browser;

beforeAll(async () => {
  browser = await launch();
});
afterAll(async () => {
  await leave(browser);
});

/** The sheet as a person prints it: the words that its cells show, the words and pages of the PDF. */
async function printed(file: string, sheet: string) {
  const html = join(folder, 'sheet.html');
  const { status, err } = await run('print', file, '-o', html, '--sheet', sheet);
  expect([status, err]).toEqual([0, '']);
  const page = await browser.newPage();
  await page.goto(`file://${html}`);
  const cells = await page.locator('td').allInnerTexts();
  const pdf = join(folder, 'sheet.pdf');
  await page.pdf({ path: pdf, preferCSSPageSize: true, printBackground: true });
  await page.close();
  const text = execFileSync('pdftotext', ['-raw', pdf, '-'], { encoding: 'utf8', maxBuffer: 1e8 });
  return { cells, text, pages: text.split('\f').length - 1 };
}

const letters = (text: string): string => text.replace(/\s+/g, '');

describe.runIf(hasPdftotext)('a printed sheet', () => {
  const samples = readdirSync('samples').filter((name) => name.endsWith('.xlsx'));
  const sheets = samples.flatMap((name) =>
    readWorkbook(readFileSync(join('samples', name)), [])
      .sheets.filter(({ state }) => state === 'visible')
      .map((sheet) => [name, sheet.name] as const),
  );

  it.each(sheets)('%s, %s: holds the text of every cell, on two pages at most', async (name, sheet) => {
    const { cells, text, pages } = await printed(join('samples', name), sheet);
    const all = letters(text);
    expect(cells.filter((cell) => !all.includes(letters(cell)))).toEqual([]);
    expect(text).toContain(`page 1 of ${pages}`);
    expect(pages).toBeLessThanOrEqual(2);
  });

  it('of 200 rows and 30 columns holds every number on two pages', async () => {
    const cells: Readonly<Record<string, number>> = Object.fromEntries(
      Array.from({ length: 200 }, (_, row) =>
        Array.from({ length: 30 }, (__, column): [string, number] => [
          `${columnLetters(column)}${row + 1}`,
          row * 30 + column,
        ]),
      ).flat(),
    );
    const file = join(folder, 'large.xlsx');
    writeFileSync(file, saveWorkbook(newWorkbook({ sheets: [{ name: 'Large', cells }] }), []));
    const { text, pages } = await printed(file, 'Large');
    const words = new Set(text.split(/\s+/));
    expect(Object.values(cells).filter((value) => !words.has(String(value)))).toEqual([]);
    expect(pages).toBeLessThanOrEqual(2);
  });
});
