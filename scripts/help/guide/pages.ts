/** The guide: chapters that walk one job, every number in them taken from the design sheet that they are about. */
import { cellAddress, parseCell } from '../../../src/cells/address';
import { CellError, type CellValue } from '../../../src/cells/value';
import { worksheetFunctions } from '../../../src/call/functions';
import { pageHtml } from '../../../src/derive/help';
import { newDesign } from '../../../src/forms/newDesign';
import { SCALE } from '../../../src/forms/scale';
import { sections } from '../../../src/forms/sections';
import { cellFinder, type Sheet, type Workbook } from '../../../src/package/model';
import { escapeHtml } from '../../../src/render/html';
import { sheetTable, TABLE_CSS, usedArea } from '../../../src/render/sheetTable';
import { shownText } from '../../../src/render/shownText';
import { CalculatedWorkbook } from '../../../src/workbook/calculated';
import { ruleLooks, type Looks } from '../../../src/workbook/looks';
import { calculateFormulas } from '../../../src/workbook/calculateFormulas';
import { chapters, type Chapter } from './chapters';

/** Stands in the column of units where there is none. */
const NO_UNIT = '–';
/** Heads the sum of the verdicts. */
const TOP = 'Verdicts';
const VERDICTS = SCALE.map(([word]) => word);
const FOLDER = 'help/guide';
/** From a page of the guide to the other pages of help. */
const UP = '../';

const pageOf = (index: number): string => `${String(index + 1)}.html`;
const pictureOf = (index: number): string => `${String(index + 1)}.svg`;

/** The design sheet that the guide is about. */
export const guideDesign = (): Promise<Workbook> =>
  newDesign(
    { sections, system: 'in', title: 'Cap for a tool handle', exampleShots: true },
    worksheetFunctions,
  );

export async function guidePages(): Promise<[string, string][]> {
  const workbook = await guideDesign();
  const sheet = workbook.sheets[0];
  if (!sheet) throw new Error('The design of the guide has no sheet.');
  const told = await answersOf(chapters.flatMap(({ text }) => text).join('\n'));
  const overlays = ruleLooks(CalculatedWorkbook.of(workbook, worksheetFunctions), [sheet]);
  const inText = new Telling(workbook, sheet, told);
  const pages = chapters.map((chapter, i): [string, string] => [
    `${FOLDER}/${pageOf(i)}`,
    pageHtml(`${String(i + 1)}. ${chapter.title}`, contents(i), body(chapter, i, inText), UP),
  ]);
  const pictures = chapters.flatMap((chapter, i): [string, string][] => {
    const shown = picture(workbook, sheet, chapter, overlays);
    return shown === undefined ? [] : [[`${FOLDER}/${pictureOf(i)}`, shown]];
  });
  return [
    [`${FOLDER}/index.html`, pageHtml('A mold, from drawing to first shot', '', list(), UP)],
    ...pages,
    ...pictures,
  ];
}

const list = (): string =>
  `<p>Ten short chapters on one invented part. Every number in them comes from its design sheet, calculated when these pages were built.</p><ol>${chapters
    .map(({ title }, i) => `<li><a href="${pageOf(i)}">${escapeHtml(title)}</a></li>`)
    .join('')}</ol><p><a href="${UP}index.html">All functions</a></p>`;

function contents(current: number): string {
  const link = (to: number, text: string): string =>
    chapters[to] ? `<a href="${pageOf(to)}">${text}: ${escapeHtml(chapters[to].title)}</a>` : '';
  const links = [`<a href="index.html">Guide</a>`, link(current - 1, 'Before'), link(current + 1, 'Next')];
  return `<nav class="guide">${links.filter(Boolean).join(' · ')}</nav>`;
}

function body({ title, text, caution, sections: about }: Chapter, i: number, telling: Telling): string {
  const warned = caution === undefined ? '' : `<p class="caution" role="note">${escapeHtml(caution)}</p>`;
  const shown =
    about.length === 0
      ? ''
      : `<a href="${pictureOf(i)}"><img class="sheet" src="${pictureOf(i)}" alt="The design sheet, ${escapeHtml(title)}"></a>`;
  return `${warned}${text.map((one) => `<p>${telling.html(one)}</p>`).join('')}${shown}`;
}

/** What formulas in a text give, with their units, by their own text. */
async function answersOf(text: string): Promise<ReadonlyMap<string, string>> {
  const formulas = [...text.matchAll(/\[\[(.*?)\]\]/g)].map(([, formula = '']) => formula);
  const units = formulas.map((formula) => {
    const [, name = ''] = /^MOLD\.([A-Z.]+)\(/.exec(formula) ?? [];
    return `MOLD.SHOW.UNIT("${name}"${formula.endsWith(',"mm")') ? ',"mm"' : ''})`;
  });
  const answers = await calculateFormulas([...formulas, ...units], worksheetFunctions);
  const valueAt = (i: number): CellValue => answers[i]?.[0]?.[0] ?? null;
  return new Map(
    formulas.map((formula, i) => {
      const [value, unit] = [valueAt(i), valueAt(formulas.length + i)];
      if (value instanceof CellError) throw new Error(`${formula}: ${value.message}`);
      const number = typeof value === 'number' ? String(Number(value.toPrecision(5))) : String(value);
      return [formula, typeof unit === 'string' ? `${number} ${unit}`.trim() : number];
    }),
  );
}

/** Puts the numbers of the sheet into texts. */
class Telling {
  private readonly cell: ReturnType<typeof cellFinder>;

  constructor(
    private readonly workbook: Workbook,
    private readonly sheet: Sheet,
    private readonly answers: ReadonlyMap<string, string>,
  ) {
    this.cell = cellFinder(sheet);
  }

  html(text: string): string {
    return text
      .split(/(\{.*?\}|\[\[.*?\]\]|`.*?`)/)
      .map((part) => {
        if (part.startsWith('{=')) return `<b>${escapeHtml(this.verdict(part.slice(2, -1)))}</b>`;
        if (part.startsWith('{')) return `<b>${escapeHtml(this.named(part.slice(1, -1)))}</b>`;
        if (part.startsWith('`')) return `<code>${escapeHtml(part.slice(1, -1))}</code>`;
        if (!part.startsWith('[[')) return escapeHtml(part);
        const formula = part.slice(2, -2);
        return `<code>=${escapeHtml(formula)}</code> gives <b>${escapeHtml(this.answers.get(formula) ?? '')}</b>`;
      })
      .join('');
  }

  /** A cell by its name, as the sheet shows it, with the unit beside it. */
  private named(name: string): string {
    const refers = this.workbook.names.find((one) => one.name === name)?.formula;
    const place = parseCell(refers?.split('!').at(-1) ?? '');
    if (!place) throw new Error(`The design of the guide has no cell with the name ${name}.`);
    const unit = this.shown(place.row, place.column + 1);
    const value = this.shown(place.row, place.column).replace(/\.$/, '');
    return unit === NO_UNIT ? value : `${value} ${unit}`.trim();
  }

  private verdict(label: string): string {
    const row = this.sheet.cells.find(({ column, value }) => column === 0 && value === label)?.row;
    const found = this.sheet.cells.find(
      (one) => one.row === row && VERDICTS.some((word) => word === one.value),
    );
    if (!found) throw new Error(`The design of the guide has no verdict "${label}".`);
    return this.shown(found.row, found.column);
  }

  private shown(row: number, column: number): string {
    const found = this.cell(row, column);
    const { value = null, style = 0 } = found ?? {};
    if (value instanceof CellError)
      throw new Error(`${cellAddress(row, column)} of the guide’s design: ${value.message}`);
    return shownText(value, this.workbook.styles[style]?.numberFormat ?? 'General', () => true, false).text;
  }
}

/** The rows of the chapter's sections, with the colors of their verdicts, as the page shows them. */
function picture(workbook: Workbook, sheet: Sheet, chapter: Chapter, overlays: Looks): string | undefined {
  if (chapter.sections.length === 0) return undefined;
  const used = usedArea(workbook, sheet);
  if (!used) throw new Error('The design of the guide is empty.');
  // A verdict may be called as its section is; what a section decides stands below its title.
  const decides = (row: number): boolean =>
    sheet.cells.some((one) => one.row === row + 1 && String(one.value).startsWith('Decide: '));
  const titles = sections.map(({ title }) => title);
  const starts = sheet.cells.filter(
    ({ row, column, value }) =>
      column === 0 && (value === TOP || (titles.includes(String(value)) && decides(row))),
  );
  const tables = chapter.sections.map((id, i) => {
    const wanted = sections.find((one) => one.id === id)?.title ?? id;
    const first = starts.find(({ value }) => value === wanted);
    if (!first) throw new Error(`The design of the guide has no section ${wanted}.`);
    const after = starts.find(({ row }) => row > first.row);
    const area = {
      ...used,
      // The last column tells the formulas.
      right: used.right - 1,
      top: first.row,
      bottom: (after?.row ?? used.bottom + 1) - 1,
    };
    const options = { area, gridlines: false, headings: true, prefix: `s${i}`, overlays, cutsAtEdge: true };
    return sheetTable(workbook, sheet, options);
  });
  return svg(tables);
}

/** Tables one below the other. */
function svg(tables: readonly ReturnType<typeof sheetTable>[]): string {
  const w = Math.ceil(Math.max(...tables.map(({ width }) => width)));
  let h = 0;
  const drawn = tables.map(({ html, height }) => {
    const top = h;
    h += Math.ceil(height);
    // A picture is XML: what HTML leaves open is closed.
    const closed = html.replace(/<col ([^>]*)>/g, '<col $1/>');
    return `<foreignObject y="${top}" width="100%" height="${Math.ceil(height)}"><div xmlns="http://www.w3.org/1999/xhtml">${closed}</div></foreignObject>`;
  });
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${w}" height="${h}" viewBox="0 0 ${w} ${h}"><style>${TABLE_CSS}</style><rect width="100%" height="100%" fill="#fff"/>${drawn.join('')}</svg>`;
}
