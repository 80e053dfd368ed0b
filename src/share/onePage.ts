/** The workbook as one HTML file that shows, calculates and explains itself in any browser, with nothing installed. */
import { BASIS_TEXT } from '../call/version';
import type { WorksheetFunction } from '../call/worksheetFunction';
import { DEFERS } from '../derive/help';
import type { Sheet, Workbook } from '../package/model';
import { base64 } from '../render/base64';
import { lookWith } from '../render/drawings/look';
import { escapeHtml } from '../render/html';
import { sheetTable, usedArea, type Shown } from '../render/sheetTable';
import type { Limits } from '../sheet/budget';
import { saveCalculated } from '../workbook/basis';
import { CalculatedWorkbook } from '../workbook/calculated';
import { ruleLooks } from '../workbook/looks';

export interface OnePageOptions {
  /** The workbook's file name. */
  readonly file: string;
  /** As it should read. */
  readonly date: string;
  /** The page without a workbook, as `webpack/plugins/onePage.js` builds it. */
  readonly template: string;
  /** How long the calculation may take. */
  readonly limits?: Limits;
}

/** A workbook that no page can be made of; the message says why. */
export class NoPage extends Error {
  override readonly name = 'NoPage';
}

/** A mail with more than this is refused by many servers, and a phone takes long to read it. */
const MOST_BYTES = 4e6;
const MOST_CELLS = 60_000;

/** Sheets that can be seen and show something, in the order of the workbook. */
export const shownSheets = (workbook: Workbook): Sheet[] =>
  workbook.sheets.filter((sheet) => sheet.state === 'visible' && usedArea(workbook, sheet) !== undefined);

/** The cells of one sheet as a table, with the letters and numbers that formulas name them by. */
export function pageTable(
  workbook: Workbook,
  sheet: Sheet,
  shown: Shown & { readonly attributes?: (row: number, column: number) => string },
): string {
  const area = usedArea(workbook, sheet) ?? { top: 0, left: 0, bottom: 0, right: 0 };
  return sheetTable(workbook, sheet, {
    ...shown,
    area: { ...area, top: 0, left: 0 },
    gridlines: sheet.showsGridlines,
    headings: true,
    prefix: `s${workbook.sheets.indexOf(sheet)}`,
  }).html;
}

export function onePage(
  workbook: Workbook,
  functions: readonly WorksheetFunction[],
  { file, date, template, limits }: OnePageOptions,
): string {
  const sheets = shownSheets(workbook);
  if (sheets.length === 0) throw new NoPage('The workbook shows nothing: a page of it would be empty.');
  const cells = sheets.reduce((sum, sheet) => sum + sheet.cells.length, 0);
  if (cells > MOST_CELLS)
    throw new NoPage(
      `The workbook shows ${cells} cells; a page that a phone can open takes ${MOST_CELLS}. Share a workbook instead, or a part of this one.`,
    );
  const bytes = saveCalculated(workbook, []);
  if (bytes.length > MOST_BYTES)
    throw new NoPage(
      `The workbook is ${(bytes.length / 1e6).toFixed(1)} MB; a page that can be mailed takes ${MOST_BYTES / 1e6} MB. Take pictures out of it, or share a workbook instead.`,
    );
  const book = CalculatedWorkbook.of(workbook, functions, limits);
  const overlays = ruleLooks(book, sheets);
  const sections = sheets.map((sheet) => {
    const table = pageTable(workbook, sheet, {
      value: (of, row, column) => book.at(of, row, column),
      overlays,
      look: lookWith((formula) => book.evaluate(formula)),
    });
    const index = workbook.sheets.indexOf(sheet);
    return `<section data-sheet="${index}" aria-label="${escapeHtml(sheet.name)}"><h2>${escapeHtml(sheet.name)}</h2><div class="table">${table}</div></section>`;
  });
  const filled: Readonly<Record<string, string>> = {
    file: escapeHtml(file),
    date: escapeHtml(date),
    basis: escapeHtml(BASIS_TEXT),
    caution: escapeHtml(DEFERS),
    sheets: sections.join('\n'),
    workbook: base64(bytes),
  };
  return template.replace(/\{\{(\w+)\}\}/g, (all, name: string) => filled[name] ?? all);
}
