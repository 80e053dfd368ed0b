import type { CellDescription, ConditionDescription, SheetDescription } from '../src/package/description';
import { columnLetters } from '../src/cells/address';
import type { Design, Heads } from './description';
import { linesOf } from '../src/forms/lines';
import { placed, print } from './layout';
import type { Pen } from './pen';
import { convertedStyle, numberStyle, typedStyle, WARN } from '../src/forms/looks';

export const WHAT_IF = 'What-if tables';
const WHAT_IF_COLUMNS = { A: 34, 'B:H': 12 } as const;

/** A second sheet with the tables of a design. */
export function whatIfSheet(design: Design, maker: Pen): SheetDescription {
  const cells: Record<string, CellDescription> = {};
  const heights: Record<number, number> = { 1: 26 };
  const conditions: ConditionDescription[] = [];
  const merges = ['A1:H1', 'A2:H2'];
  const home = /^\w+$/.test(design.sheet) ? `${design.sheet}!` : `'${design.sheet}'!`;
  const away = (formula: string, extra: Readonly<Record<string, string>> = {}) =>
    placed(formula, (key) => extra[key] ?? maker.place(key, home));
  // A rule moves with its cells: what it compares with must not.
  const fixed = (formula: string, extra: Readonly<Record<string, string>>) =>
    placed(formula, (key) => extra[key] ?? maker.place(key, home)?.replace(/D(\d+)$/, '$D$$$1'));
  cells['A1'] = { value: `${design.title}: what if`, style: 'title' };
  cells['A2'] = {
    value:
      'Each table is one formula that spills. Yellow heads may be typed over; everything else follows the other sheet, in its units.',
    style: 'scenario',
  };
  heights[2] = 20;
  let row = 4;
  for (const { title, unitOf, says, down, across, formula, format, mark } of design.whatIf) {
    const columns = across.values.map((_, i) => columnLetters(2 + i));
    const last = columns.at(-1) ?? 'C';
    const first = row + 3;
    const end = first + down.values.length - 1;
    cells[`A${row}`] =
      unitOf === undefined
        ? { value: title, style: 'section' }
        : { formula: `"${title}, "&${maker.unitCell(unitOf, home)}`, style: 'section' };
    merges.push(`A${row}:H${row}`, `A${row + 1}:H${row + 1}`);
    heights[row] = 22;
    cells[`A${row + 1}`] = { value: says, style: 'decide' };
    heights[row + 1] = 5 + 13.5 * linesOf(says, 34 + 7 * 12);
    const named = ({ label, unitOf: of }: Heads): CellDescription =>
      of === undefined ? { value: label } : { formula: `"${label}, "&${maker.unitCell(of, home)}` };
    cells[`A${row + 2}`] = { ...named(across), style: 'headRight' };
    cells[`B${row + 2}`] = { style: 'head' };
    const head = (value: number | string, { format: numberFormat }: Heads): CellDescription =>
      typeof value === 'number'
        ? { value, style: maker.style({ ...typedStyle, numberFormat }) }
        : { formula: away(value), style: maker.style({ ...numberStyle(numberFormat), fill: '#DFE8EE' }) };
    across.values.forEach((value, i) => {
      cells[`${String(columns[i])}${row + 2}`] = head(value, across);
    });
    heights[row + 2] = 20;
    down.values.forEach((value, i) => {
      cells[`A${first + i}`] = i === 0 ? { ...named(down), style: 'label' } : { style: 'label' };
      cells[`B${first + i}`] = head(value, down);
      columns.forEach((column) => {
        cells[`${column}${first + i}`] = { style: maker.style(convertedStyle(format)) };
      });
      heights[first + i] = 18;
    });
    const corner = `C${first}`;
    const area = `${corner}:${last}${end}`;
    cells[corner] = {
      ...cells[corner],
      formula: away(formula, { down: `B${first}:B${end}`, across: `C${row + 2}:${last}${row + 2}` }),
      fills: area,
    };
    cells[`A${end + 1}`] = { formula: `FORMULATEXT(${corner})`, style: 'formula' };
    merges.push(`A${end + 1}:H${end + 1}`);
    heights[end + 1] = 18;
    row = end + 2;
    if (mark) {
      conditions.push({ cells: area, when: fixed(mark.when, { answer: corner }), style: WARN });
      cells[`A${row}`] = { value: mark.says, style: 'decide' };
      merges.push(`A${row}:H${row}`);
      row += 1;
    }
    row += 1;
  }
  return {
    name: WHAT_IF,
    tabColor: '#C9B458',
    gridlines: false,
    columns: WHAT_IF_COLUMNS,
    rows: heights,
    cells,
    merges,
    freeze: 'A3',
    conditions,
    print: print(`A1:H${row - 1}`, '1:2'),
  };
}
