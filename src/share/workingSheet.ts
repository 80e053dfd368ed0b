import { columnLetters } from '../cells/address';
import type {
  CellDescription,
  ConditionDescription,
  SheetDescription,
  StyleDescription,
} from '../package/description';
import { heightOf } from './textHeight';
import { quotedSheet } from '../cells/address';
import { inLetters, inSigns, inWords } from '../derive/typeset';
import { inFormats, styleFor } from './valueFormats';
import { HEAD_ROWS, VALUES, type Block, type WorkingHead, type WorkingLine } from './workingLine';

const RESULT_FILL = '#E9F2EA';
const QUIET = '#6B7780';
const VALUE_STYLES: Readonly<Record<string, StyleDescription>> = {
  'share value': { vertical: 'top', horizontal: 'right', font: { size: 9 } },
  'share check value': { vertical: 'top', horizontal: 'right', font: { size: 9, color: QUIET } },
  'share result': { vertical: 'top', horizontal: 'right', font: { size: 9, bold: true }, fill: RESULT_FILL },
};

export const WORKING_STYLES: Readonly<Record<string, StyleDescription>> = {
  'share about': { wrap: true, vertical: 'top', font: { italic: true, color: '#5A6670' } },
  'share line': { wrap: true, vertical: 'top', font: { size: 9 } },
  'share check': { wrap: true, vertical: 'top', font: { size: 9, color: QUIET } },
  'share result line': { wrap: true, vertical: 'top', font: { size: 9, bold: true }, fill: RESULT_FILL },
  'share unit': { vertical: 'top', horizontal: 'left', indent: 1, font: { size: 9 } },
  'share result unit': {
    vertical: 'top',
    horizontal: 'left',
    indent: 1,
    font: { size: 9, bold: true },
    fill: RESULT_FILL,
  },
  'share column': { horizontal: 'right', font: { bold: true }, fill: '#E8EDF1' },
  'share place': { font: { bold: true, color: '#1F4E79', underline: 'single' }, fill: '#E8EDF1' },
  ...Object.fromEntries(
    Object.entries(VALUE_STYLES).flatMap(([name, style]) => Object.entries(inFormats(name, style))),
  ),
};

const WIDTHS = { says: 38, symbol: 9, equation: 46, value: 15 } as const;
const ABOUT =
  'One step a row, in SI units. It follows whatever is changed in the cells that it reads. The formula of a cell names the row of its result here; the address at the head of a part leads back to the cell. A cell that was filled down, or sorted into another row, says so: ask for a new copy. The sheet is protected, without a password, so that its rows stay where they are.';
/** Where more cells stand side by side, paper has the first of them: the equations are the same. */
const COLUMNS_ON_PAPER = 2;
const GRAY = '#9AA5AD';
const GRAYED = { font: { color: GRAY, italic: true } } as const;

/** A cell in the format that suits its value. */
export const inItsFormat = (cell: CellDescription): CellDescription =>
  cell.style !== undefined && cell.style in VALUE_STYLES && cell.value !== undefined
    ? { ...cell, style: styleFor(cell.style, cell.value) }
    : cell;

/** The working as a sheet that a person follows from line to line. */
export function describeWorking(
  name: string,
  state: NonNullable<SheetDescription['state']>,
  blocks: readonly Block[],
  text: (own: string) => string,
): SheetDescription {
  const cells: Record<string, CellDescription> = {
    A1: { value: name, style: 'share title' },
    A2: { value: ABOUT, style: 'share about' },
  };
  ['Name', 'Symbol', 'Equation', 'Value', 'Unit'].forEach((value, i) => {
    cells[`${columnLetters(i)}3`] = { value, style: i === VALUES ? 'share column' : 'share head' };
  });
  const rows: Record<number, number> = {
    2: heightOf([{ text: ABOUT, width: WIDTHS.says + WIDTHS.symbol + WIDTHS.equation }]) + 6,
  };
  const conditions: ConditionDescription[] = [];
  let widest = 1;
  let last = 4;
  for (const block of blocks) {
    const width = Math.max(
      ...block.columns.map(({ lines }) => lines[0]?.texts.length ?? 1),
      block.columns.length,
    );
    widest = Math.max(widest, width);
    head(cells, block, width);
    const [first] = block.columns;
    first?.lines.forEach((line, i) => {
      last = block.row + HEAD_ROWS + i;
      const says = equationOf(block, i);
      rows[last] = heightOf([
        { text: line.says, width: WIDTHS.says },
        { text: says, width: WIDTHS.equation },
      ]);
      lineCells(
        cells,
        last,
        { ...line, equation: says },
        block.columns.flatMap(({ lines }) => lines[i]?.texts ?? []),
        text,
      );
    });
    conditions.push(...casesOf(block, width));
  }
  return {
    name,
    state,
    gridlines: false,
    columns: {
      A: WIDTHS.says,
      B: WIDTHS.symbol,
      C: WIDTHS.equation,
      [`D:${columnLetters(VALUES + widest)}`]: WIDTHS.value,
    },
    rows,
    cells,
    merges: ['A2:E2'],
    freeze: 'A4',
    // None asks whether a line is in error: LibreOffice 7.4 ends when it prints a long working with such a rule.
    conditions,
    // Cells elsewhere read its lines where they stand: rows that are sorted or deleted here would give other numbers.
    protect: true,
    // LibreOffice prints a hidden sheet too where it has an area to print.
    ...(state === 'visible' && {
      print: {
        paper: 'A4',
        area: `A1:${columnLetters(VALUES + Math.min(widest, COLUMNS_ON_PAPER))}${last}`,
        titleRows: '3:3',
        margins: { side: 0.5, top: 0.6, bottom: 0.7 },
        footer: { left: '&F', center: '&A', right: '&P / &N' },
      },
    }),
  };
}

/** The cells that a block belongs to, each with a way back to it, the formula of the first, and what it gives. */
function head(cells: Record<string, CellDescription>, { row, columns }: Block, width: number): void {
  const [first] = columns;
  if (!first) return;
  const last = columns.at(-1) ?? first;
  for (let at = 0; at <= VALUES + width; at++)
    cells[`${columnLetters(at)}${row}`] = { value: null, style: 'share head' };
  const isWide = columns.length > 1;
  const says = isWide ? [first.says, first.what] : [first.label ?? '', first.says];
  cells[`A${row + 1}`] = {
    value: says.filter((text) => text !== '').join(isWide ? ' ' : ': '),
    style: 'share small',
  };
  if (first.sheet === '') {
    cells[`A${row}`] = { value: first.what, style: 'share head' };
    return;
  }
  const link = ({ sheet, cell }: WorkingHead): string => `#${quotedSheet(sheet)}!${cell}`;
  const cell = isWide ? `${first.cell} to ${last.cell}` : first.cell;
  cells[`A${row}`] = { value: `${first.sheet}!${cell}`, style: 'share place', link: link(first) };
  if (!isWide) cells[`B${row}`] = { value: first.what, style: 'share head' };
  else
    columns.forEach((one, i) => {
      cells[`${columnLetters(VALUES + i)}${row}`] = {
        value: one.cell,
        style: 'share column',
        link: link(one),
      };
    });
}

/** What the columns of a line have in common. */
function equationOf({ columns }: Block, line: number): string {
  const all = new Set(columns.map(({ lines }) => lines[line]?.equation ?? ''));
  const [first = ''] = all;
  return all.size > 1 ? `${first} …` : first;
}

function lineCells(
  cells: Record<string, CellDescription>,
  row: number,
  { role, says, symbol, equation, unit }: WorkingLine,
  texts: readonly string[],
  text: (own: string) => string,
): void {
  const isResult = role === 'result';
  const style = isResult ? 'share result line' : role === 'check' ? 'share check' : 'share line';
  const isEquation = role === 'step' && symbol !== '';
  const isNamed = role === 'check' || role === 'question';
  const shown = isEquation ? inSigns(equation) : isNamed ? inWords(equation) : equation;
  [inWords(says), inLetters(symbol), shown].forEach((value, i) => {
    if (value !== '' || isResult) cells[`${columnLetters(i)}${row}`] = { value, style };
  });
  texts.forEach((own, i) => {
    cells[`${columnLetters(VALUES + i)}${row}`] = {
      formula: text(own),
      style: isResult ? 'share result' : role === 'check' ? 'share check value' : 'share value',
    };
  });
  const last = `${columnLetters(VALUES + texts.length)}${row}`;
  const constant = /^"((?:[^"]|"")*)"$/.exec(unit)?.[1];
  const beside = isResult ? 'share result unit' : 'share unit';
  if (constant === undefined) cells[last] = { formula: text(unit), style: beside };
  else if (constant !== '' || isResult) cells[last] = { value: constant, style: beside };
}

/** Lines of a case that does not hold are gray: those one under another that count in the same cases as one rule. */
function casesOf({ row, columns }: Block, width: number): ConditionDescription[] {
  const lines = columns[0]?.lines ?? [];
  const runs: { from: number; to: number; only: readonly number[] }[] = [];
  lines.forEach(({ only }, i) => {
    const run = runs.at(-1);
    if (run?.to === i - 1 && run.only.join() === only.join()) run.to = i;
    else runs.push({ from: i, to: i, only });
  });
  const at = (line: number): number => row + HEAD_ROWS + line;
  return runs
    .filter(({ only }) => only.length > 0)
    .map(({ from, to, only }) => ({
      cells: `D${at(from)}:${columnLetters(VALUES + width - 1)}${at(to)}`,
      when: `NOT(OR(${only.map((line) => `D$${at(line)}`).join(',')}))`,
      style: GRAYED,
    }));
}
