import { BASIS_TEXT } from '../call/version';
import type { CellDescription, SheetDescription, StyleDescription } from '../package/description';
import { columnLetters } from '../cells/address';
import type { DescribedCall } from './describe';
import { inLetters, inSigns, inWords } from '../derive/typeset';
import { heightOf } from './textHeight';
import { WORKING_STYLES } from './workingSheet';

/** Styles of everything that sharing adds. */
export const SHARE_STYLES: Readonly<Record<string, StyleDescription>> = {
  ...WORKING_STYLES,
  'share title': { font: { bold: true, size: 14 } },
  'share head': { font: { bold: true }, fill: '#E8EDF1' },
  'share small': { font: { italic: true, color: '#5A6670' } },
  'share text': { wrap: true, vertical: 'top', font: { size: 9 } },
};

export interface BasisCell {
  readonly sheet: string;
  readonly cell: string;
}

/** One use of a function. */
export interface BasisLine extends BasisCell {
  readonly call: DescribedCall;
  readonly status: string;
}

const COLUMNS = [
  { head: 'Function', width: 62 },
  { head: 'Equations', width: 92 },
  { head: 'Sources', width: 14 },
  { head: 'Cells that use it', width: 40 },
] as const;
const WIDTH = COLUMNS.reduce((sum, { width }) => sum + width, 0);

/** The sheet that says what our formulas rest on: each function, caution, symbol, source and input once. */
export function basisSheet(
  name: string,
  lines: readonly BasisLine[],
  frozen: readonly BasisCell[],
  date: string,
): SheetDescription {
  const cells: Record<string, CellDescription> = {
    A1: { value: 'What these numbers rest on', style: 'share title' },
    A2: { value: `Moldsheet, ${BASIS_TEXT}. Written ${date}. ${statusText(lines)}`, style: 'share small' },
  };
  const rows: Record<number, number> = {};
  const merges: string[] = [];
  let row = 3;
  const head = (...texts: readonly string[]): void => {
    row += 1;
    COLUMNS.forEach((_, i) => {
      cells[`${columnLetters(i)}${row}`] = { value: texts[i] ?? null, style: 'share head' };
    });
    row += 1;
  };
  const wide = (text: string): void => {
    cells[`A${row}`] = { value: text, style: 'share text' };
    merges.push(`A${row}:${columnLetters(COLUMNS.length - 1)}${row}`);
    rows[row] = heightOf([{ text, width: WIDTH }]);
    row += 1;
  };
  const sources = [...new Set(lines.flatMap(({ call }) => call.sources))].sort();
  head(...COLUMNS.map((column) => column.head));
  for (const uses of byFunction(lines)) {
    const texts = functionTexts(uses, sources);
    texts.forEach((value, i) => {
      cells[`${columnLetters(i)}${row}`] = { value, style: 'share text' };
    });
    rows[row] = heightOf(texts.map((text, i) => ({ text, width: COLUMNS[i]?.width ?? 20 })));
    row += 1;
  }
  const section = (title: string, texts: readonly string[]): void => {
    if (texts.length === 0) return;
    head(title);
    for (const text of texts) wide(text);
  };
  section(
    'Held at the value of the day the copy was made: they say so where their inputs change',
    frozen.length === 0 ? [] : [cellsText(frozen)],
  );
  section('Cautions, and what lies outside the range of its equation', cautionTexts(lines));
  section('Symbols', inOne(symbolTexts(lines)));
  section('Inputs as they are now', inOne(inputTexts(lines)));
  section('Sources', inOne(sources.map((source, i) => `[${i + 1}] ${source}`)));
  return {
    name,
    gridlines: false,
    columns: Object.fromEntries(COLUMNS.map(({ width }, i) => [columnLetters(i), width])),
    rows,
    cells,
    merges,
    freeze: 'A3',
    print: {
      paper: 'A4',
      landscape: true,
      pagesWide: 1,
      area: `A1:${columnLetters(COLUMNS.length - 1)}${row - 1}`,
      titleRows: '1:2',
      // Letter is shorter and wider than A4: margins that leave room on both.
      margins: { side: 0.4, top: 0.5, bottom: 0.6 },
      footer: { left: '&F', center: BASIS_TEXT, right: '&P / &N' },
    },
  };
}

/** Rows take at most 409 points: a text over many lines goes on in the next. */
const LONGEST = 2200;

/** Short entries after one another. */
function inOne(entries: readonly string[]): string[] {
  const texts: string[] = [];
  for (const entry of entries) {
    const last = texts.at(-1);
    if (last !== undefined && last.length + entry.length < LONGEST)
      texts[texts.length - 1] = `${last}   ·   ${entry}`;
    else texts.push(entry);
  }
  return texts;
}

const byFunction = (lines: readonly BasisLine[]): BasisLine[][] =>
  [...grouped(lines, ({ call }) => call.name)].map(([, own]) => own);

function functionTexts(uses: readonly BasisLine[], sources: readonly string[]): string[] {
  const [first] = uses;
  if (!first) return [];
  const all = (pick: (call: DescribedCall) => readonly string[]): string[] => [
    ...new Set(uses.flatMap(({ call }) => pick(call))),
  ];
  return [
    `${first.call.name}\n${first.call.summary}`,
    all(({ equations }) => equations.map(inSigns)).join('   ·   '),
    all((call) => call.sources)
      .map((source) => `[${sources.indexOf(source) + 1}]`)
      .join(' '),
    cellsText(uses),
  ];
}

/** The cells of each sheet, those next to one another in a column as one run. */
function cellsText(uses: readonly BasisCell[]): string {
  return [...grouped(uses, ({ sheet }) => sheet)]
    .map(([sheet, own]) => `${sheet}!${[...new Set(own.map(({ cell }) => cell))].join(', ')}`)
    .join('; ');
}

/** What became of a formula, for who does not know our words for it. */
const STATUS: Readonly<Record<string, string>> = {
  native: 'worked out in the copy',
  'looked up': 'worked out with a table that the copy carries',
  frozen: 'held at its value of that day',
  refused: 'in error',
};

function statusText(lines: readonly BasisLine[]): string {
  const parts = [...grouped(lines, ({ status }) => status)].map(
    ([status, own]) => `${own.length} ${STATUS[status] ?? status}`,
  );
  return lines.some(({ status }) => status === '') ? '' : `Formulas: ${parts.join(', ')}.`;
}

/** Each caution once, with the cells that it is about. */
function cautionTexts(lines: readonly BasisLine[]): string[] {
  const said = lines.flatMap((line) => [
    ...line.call.outside.map((says) => ({ line, says: `Outside its range: ${says}` })),
    ...line.call.cautions.map((says) => ({ line, says })),
  ]);
  return [...grouped(said, ({ says }) => says)].map(
    ([says, own]) => `${says} (${cellsText(own.map(({ line }) => line))})`,
  );
}

/** A symbol that means several things says of which functions. */
function symbolTexts(lines: readonly BasisLine[]): string[] {
  const known = new Map<string, Map<string, Set<string>>>();
  for (const { call } of lines) {
    for (const { symbol, says } of call.symbols) {
      const meanings = known.get(symbol) ?? new Map<string, Set<string>>();
      meanings.set(says, (meanings.get(says) ?? new Set()).add(call.name.replace(/^MOLD\./, '')));
      known.set(symbol, meanings);
    }
  }
  return [...known]
    .sort(([a], [b]) => a.localeCompare(b))
    .map(([symbol, meanings]) => {
      const several = meanings.size > 1;
      const all = [...meanings].map(([says, of]) => (several ? `${says} (${[...of].join(', ')})` : says));
      return `${inLetters(symbol)} = ${all.join('; or ')}`;
    });
}

/** An argument that several calls give the same stands once. */
function inputTexts(lines: readonly BasisLine[]): string[] {
  const given = lines.flatMap((line) => line.call.inputs.map((text) => ({ line, text })));
  const name = (text: string): string => text.slice(0, text.indexOf(' = '));
  const differ = new Map(
    [...grouped(given, ({ text }) => name(text))].map(([key, own]) => [
      key,
      new Set(own.map(({ text }) => text)).size,
    ]),
  );
  return [...grouped(given, ({ text }) => text)].map(([text, own]) => {
    const says = `${inWords(name(text))}${text.slice(name(text).length)}`;
    return (differ.get(name(text)) ?? 1) > 1 ? `${says} (${cellsText(own.map(({ line }) => line))})` : says;
  });
}

function grouped<T>(all: readonly T[], key: (one: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const one of all) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return groups;
}
