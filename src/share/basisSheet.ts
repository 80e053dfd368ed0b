import { BASIS_TEXT } from '../call/version';
import type { CellValue } from '../cells/value';
import type { CellDescription, SheetDescription, StyleDescription } from '../package/description';
import { columnLetters } from '../cells/address';
import { heightOf } from './textHeight';
import { WORKING_STYLES } from './workingSheet';
import { withItsUnit, type DescribedCall } from './describe';

/** Styles of everything that sharing adds. */
export const SHARE_STYLES: Readonly<Record<string, StyleDescription>> = {
  ...WORKING_STYLES,
  'share title': { font: { bold: true, size: 14 } },
  'share head': { font: { bold: true }, fill: '#E8EDF1' },
  'share small': { font: { italic: true, color: '#5A6670' } },
  'share text': { wrap: true, vertical: 'top', font: { size: 9 } },
};

export interface BasisLine {
  readonly where: string;
  readonly formula: string;
  readonly value: CellValue;
  readonly call: DescribedCall;
  readonly status: string;
}

const COLUMNS: readonly {
  readonly head: string;
  readonly width: number;
  readonly text: (line: BasisLine) => string;
}[] = [
  { head: 'Cell', width: 13, text: ({ where, status }) => `${where}\n${status}` },
  { head: 'Formula and meaning', width: 32, text: ({ formula, call }) => `=${formula}\n${call.summary}` },
  { head: 'Inputs', width: 26, text: ({ call }) => call.inputs.join('\n') },
  { head: 'Result', width: 14, text: ({ value, call }) => withItsUnit(value, call.unit) },
  { head: 'Equation', width: 34, text: ({ call }) => call.equations.join('\n') },
  {
    head: 'Source, range and cautions',
    width: 46,
    text: ({ call }) =>
      [
        ...call.sources,
        ...call.outside.map((says) => `Outside its range: ${says}`),
        ...call.cautions.map((says) => `Caution: ${says}`),
      ].join('\n'),
  },
];

/** The sheet that says what every one of our formulas rests on; fits the width of A4 and of Letter on its side. */
export function basisSheet(name: string, lines: readonly BasisLine[], date: string): SheetDescription {
  const last = columnLetters(COLUMNS.length - 1);
  const cells: Record<string, CellDescription> = {
    A1: { value: 'What these numbers rest on', style: 'share title' },
    A2: { value: `Moldsheet, ${BASIS_TEXT}. Written ${date}.` },
  };
  const heights: Record<number, number> = {};
  COLUMNS.forEach(({ head }, i) => (cells[`${columnLetters(i)}4`] = { value: head, style: 'share head' }));
  lines.forEach((line, down) => {
    const row = 5 + down;
    const texts = COLUMNS.map(({ text }) => text(line));
    texts.forEach((value, i) => {
      if (value !== '') cells[`${columnLetters(i)}${row}`] = { value, style: 'share text' };
    });
    heights[row] = heightOf(texts.map((text, i) => ({ text, width: COLUMNS[i]?.width ?? 20 })));
  });
  const end = 4 + Math.max(1, lines.length);
  return {
    name,
    gridlines: false,
    columns: Object.fromEntries(COLUMNS.map(({ width }, i) => [columnLetters(i), width])),
    rows: heights,
    cells,
    freeze: 'A5',
    print: {
      paper: 'A4',
      landscape: true,
      pagesWide: 1,
      area: `A1:${last}${end}`,
      titleRows: '4:4',
      // Letter is shorter and wider than A4: margins that leave room on both.
      margins: { side: 0.5, top: 0.7, bottom: 0.7 },
      footer: { left: '&F', center: BASIS_TEXT, right: '&P / &N' },
    },
  };
}
