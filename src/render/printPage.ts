/** Sheets as one HTML file to print: fitted to the paper's width, with a title block, headings repeated on every page. */
import type { Area } from '../cells/address';
import type { Sheet, Workbook } from '../package/model';
import { readPrintSetup, type PrintSetup } from '../package/readPrint';
import { escapeHtml } from './html';
import { sheetTable, TABLE_CSS, usedArea, type Shown } from './sheetTable';

export type Paper = 'A4' | 'Letter';

export interface PrintOptions extends Shown {
  /** The file's name, as the title block tells it. */
  readonly file: string;
  readonly date: string;
  /** Left out of the title block where empty. */
  readonly revision?: string;
  readonly paper?: Paper;
  readonly gridlines?: boolean;
  readonly headings?: boolean;
  /** Sheets by name; all that can be seen unless told. */
  readonly sheets?: readonly string[];
  /** A part of the one sheet. */
  readonly area?: Area;
  /** HTML of the shown work of chosen cells, on pages behind the sheets. */
  readonly work?: readonly string[];
}

/** Pixels of 1/96 inch. */
const SIZES: Readonly<Record<Paper, { readonly width: number; readonly height: number }>> = {
  Letter: { width: 816, height: 1056 },
  A4: { width: 794, height: 1123 },
};
const MARGIN = 48;
/** The title block above and below. */
const BLOCK = 44;
/** Smaller than this nobody reads it at the bench. */
const LEAST_ZOOM = 0.35;
const FEW_PAGES = 2;
/** Of a page's height: a row that does not fit any more goes to the next page, and rows grow with the fonts at hand. */
const FILLED = 0.88;

interface Fit {
  readonly landscape: boolean;
  readonly zoom: number;
}

/** Zooms that differ by less look alike, and the orientation that the sheet asks for is taken. */
const ALIKE = 1.15;

/** The orientation and size at which a sheet is largest on the fewest pages. */
export function fit(width: number, height: number, paper: Paper, asked = false): Fit {
  const size = SIZES[paper];
  const choice = (landscape: boolean): Fit & { readonly pages: number } => {
    const [across, down] = landscape ? [size.height, size.width] : [size.width, size.height];
    const room = { width: across - 2 * MARGIN, height: down - 2 * (MARGIN + BLOCK) };
    const wide = Math.min(1, room.width / Math.max(1, width));
    const tall = (FEW_PAGES * room.height * FILLED) / Math.max(1, height);
    const zoom = Math.min(wide, Math.max(tall, LEAST_ZOOM));
    return { landscape, zoom, pages: Math.ceil((height * zoom) / (room.height * FILLED)) };
  };
  const [wanted, other] = [choice(asked), choice(!asked)];
  const many = Math.max(wanted.pages, other.pages) > FEW_PAGES;
  if (many && wanted.pages !== other.pages) return wanted.pages < other.pages ? wanted : other;
  return other.zoom > wanted.zoom * ALIKE ? other : wanted;
}

export function printHtml(workbook: Workbook, options: PrintOptions): string {
  const wanted = options.sheets;
  const sheets = workbook.sheets.filter((sheet) =>
    wanted ? wanted.includes(sheet.name) : sheet.state === 'visible',
  );
  const pages = sheets.flatMap((sheet, index) => sheetSection(workbook, sheet, index, options) ?? []);
  const paper = options.paper ?? 'Letter';
  const work = (options.work ?? []).map((html) => `<section class="work">${html}</section>`);
  return [
    '<!doctype html>',
    '<html lang="en"><head><meta charset="utf-8">',
    `<title>${escapeHtml(options.file)}</title>`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<style>${baseCss(paper, options)}\n${pages.map(({ css }) => css).join('\n')}</style>`,
    '</head><body>',
    ...pages.map(({ html }) => html),
    ...work,
    ...(pages.length + work.length === 0 ? ['<p>The workbook has nothing to print.</p>'] : []),
    '</body></html>',
  ].join('\n');
}

function sheetSection(
  workbook: Workbook,
  sheet: Sheet,
  index: number,
  options: PrintOptions,
): { readonly css: string; readonly html: string } | undefined {
  const setup: PrintSetup = readPrintSetup(workbook.parts, sheet.name);
  const area = options.area ?? setup.area ?? usedArea(workbook, sheet);
  if (!area) return undefined;
  const name = `sheet${index + 1}`;
  const table = sheetTable(workbook, sheet, {
    area,
    ...(setup.titleRows && { titleRows: setup.titleRows }),
    gridlines: options.gridlines ?? setup.gridlines,
    headings: options.headings ?? false,
    prefix: name,
    ...(options.value && { value: options.value }),
    ...(options.overlays && { overlays: options.overlays }),
    ...(options.look && { look: options.look }),
    ...(options.decimalComma && { decimalComma: true }),
  });
  const paper = options.paper ?? setup.paper ?? 'Letter';
  const { landscape, zoom } = fit(table.width, table.height, paper, setup.landscape);
  return {
    css: `@page ${name} { size: ${paper} ${landscape ? 'landscape' : 'portrait'}; @top-center { content: "${cssText(sheet.name)}"; } }\n.${name} { page: ${name}; } .${name} > table { zoom: ${zoom.toFixed(4)}; }`,
    html: `<section class="page ${name}" aria-label="${escapeHtml(sheet.name)}">${table.html}</section>`,
  };
}

const cssText = (text: string): string =>
  text.replaceAll(/["\\\n]/g, (one) => `\\${one.charCodeAt(0).toString(16)} `);

/** The title block stands in the margins of every page: file, sheet, date, revision, page n of m. */
function baseCss(paper: Paper, { file, date, revision = '' }: PrintOptions): string {
  const right = revision === '' ? date : `${date}   rev. ${revision}`;
  return `@page { size: ${paper}; margin: 0.75in 0.5in;
  @top-left { content: "${cssText(file)}"; }
  @top-right { content: "${cssText(right)}"; }
  @bottom-left { content: "Made with Moldsheet"; }
  @bottom-right { content: "page " counter(page) " of " counter(pages); } }
@page { @top-left { font: 9pt Arial, "Liberation Sans", sans-serif; color: #444 } @top-center { font: bold 9pt Arial, "Liberation Sans", sans-serif } @top-right { font: 9pt Arial, "Liberation Sans", sans-serif; color: #444 } @bottom-left { font: 8pt Arial, "Liberation Sans", sans-serif; color: #666 } @bottom-right { font: 9pt Arial, "Liberation Sans", sans-serif; color: #444 } }
html { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
body { margin: 0; color: #000; background: #fff; }
section.page, section.work { break-after: page; } section:last-of-type { break-after: auto; }
${TABLE_CSS}
section.work { font: 10pt Arial, "Liberation Sans", sans-serif; } section.work table { border-collapse: collapse; width: 100%; }
section.work td, section.work th { border-bottom: 1px solid #ccc; padding: 3px 6px; text-align: left; vertical-align: top; }
section.work h2 { font-size: 13pt; margin: 0 0 6px; } section.work article + article { border-top: 2px solid #444; margin-top: 18px; padding-top: 12px; } section.work h2, section.work h3, section.work h4 { break-after: avoid; } section.work li, section.work .equation { break-inside: avoid; } section.work small { color: #444; } section.work .refusal, section.work .caution { color: #8a2a00; } section.work svg { max-width: 4in; height: auto; }
section.work tr, section.work svg { break-inside: avoid; }
@media screen { body { background: #888; } section.page, section.work { background: #fff; margin: 16px auto; padding: 0.5in; width: max-content; max-width: calc(100vw - 1in); overflow: auto; box-shadow: 0 2px 8px #0006; } }`;
}
