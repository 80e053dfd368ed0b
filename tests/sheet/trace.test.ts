import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { cellAddress, areaAddress, parseCell } from '../../src/cells/address';
import { newWorkbook } from '../../src/package/author';
import { Book } from '../../src/sheet/book';
import { traceOf, type Trace } from '../../src/sheet/trace';
import { contentOf } from '../../src/workbook/content';

const workbook = newWorkbook({
  names: { draft: 'Main!$A$1', total: 'Main!$B$8' },
  sheets: [
    {
      name: 'Main',
      cells: {
        A1: 5,
        A2: 0,
        A3: 'text',
        B1: { formula: 'A1*2+A1' },
        B2: { formula: 'draft+SUM(A1:A3)+Other!A1' },
        B3: { formula: '1/A2' },
        B4: { formula: 'B3+B1' },
        B5: { formula: 'SUM(B1:B4)' },
        B6: { formula: 'INDIRECT("A1")' },
        B7: { formula: 'IFERROR(B3,0)+D1' },
        B8: { formula: 'MOLD.SEAT.FORCE(B7,5,0.15)' },
        B9: { formula: 'MOLD.SEAT.FORCE(100,95,0.15)+A1' },
        B10: { formula: 'C6+1' },
        C6: { formula: 'total' },
        D1: { formula: 'NA()' },
        C1: { formula: 'SEQUENCE(2)', fills: 'C1:C2' },
        C4: { formula: 'C2+1' },
      },
    },
    { name: 'Other', cells: { A1: { formula: 'Main!B1' } } },
  ],
});
const book = new Book(contentOf(workbook), worksheetFunctions);
book.calculate();

function trace(address: string): Trace {
  const place = parseCell(address);
  return traceOf(book, { sheet: 0, row: place?.row ?? 0, column: place?.column ?? 0 });
}
const names = ['', 'Other!'];
const cells = (all: Trace['readers']): string[] =>
  all.map(({ sheet, row, column }) => `${names[sheet] ?? ''}${cellAddress(row, column)}`);
const areas = (all: Trace['reads']): string[] =>
  all.map((area) => `${names[area.sheet] ?? ''}${areaAddress(area)}`);

describe('the trace of a cell', () => {
  it('names what any formula reads, each once: cells, ranges, names, other sheets', () => {
    expect(areas(trace('B1').reads)).toEqual(['A1']);
    expect(areas(trace('B2').reads)).toEqual(['A1', 'A1:A3', 'Other!A1']);
    expect(trace('A1')).toMatchObject({ reads: [], readsMore: false, error: [] });
  });

  it('names what depends on it, through ranges and from other sheets', () => {
    expect(cells(trace('B1').readers).sort()).toEqual(['B4', 'B5', 'Other!A1']);
    expect(cells(trace('A2').readers).sort()).toEqual(['B2', 'B3']);
  });

  it('of a spilled cell is that of the formula that fills it', () => {
    expect(trace('C2').formula).toMatchObject({ row: 0, column: 2, text: 'SEQUENCE(2)' });
    expect(cells(trace('C2').readers)).toEqual(['C4']);
  });

  it('follows an error to the cell where it began', () => {
    expect(cells(trace('B5').error)).toEqual(['B3']);
    expect(cells(trace('B4').error)).toEqual(['B3']);
    expect(trace('B3').error).toEqual([]);
  });

  it('passes by an error that a formula catches, through names and our functions, and stays where one refuses', () => {
    expect(cells(trace('B7').error)).toEqual(['D1']);
    expect(cells(trace('B8').error)).toEqual(['B7', 'D1']);
    expect(cells(trace('B10').error)).toEqual(['C6', 'B8', 'B7', 'D1']);
    expect(cells(trace('B9').error)).toEqual([]);
  });

  it('says when a formula may read what it does not name', () => {
    expect(trace('B6').readsMore).toBe(true);
  });
});
