import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { CellError } from '../../src/cells/value';
import { newWorkbook } from '../../src/package/author';
import { Book } from '../../src/sheet/book';
import { contentOf } from '../../src/workbook/content';

function calculated(format: string) {
  const workbook = newWorkbook({
    styles: { date: { numberFormat: format } },
    sheets: [
      {
        name: 'Sheet1',
        cells: {
          A1: { value: 46_150, style: 'date' },
          A2: 10,
          B1: { formula: 'MOLD.SEAT.CLEAR(A1,10,"mm")' },
          B2: { formula: 'A1+1' },
          B3: { formula: 'MOLD.STACK.WORST(A1:A2)' },
          B4: { formula: 'MOLD.SEAT.CLEAR(A2,10,"mm")' },
        },
      },
    ],
  });
  const book = new Book(contentOf(workbook), worksheetFunctions);
  book.calculate();
  return (row: number) => book.value(0, row, 1);
}

describe('a number in a date format', () => {
  it.each(['d-mmm', 'm/d/yyyy', 'mmm-yy'])(
    '(%s) is refused by our functions, which name its cell',
    (format) => {
      const value = calculated(format);
      for (const row of [0, 2]) {
        const refused = value(row);
        if (!(refused instanceof CellError)) throw new Error(`answered ${String(refused)}`);
        expect(refused.code).toBe('#VALUE!');
        expect(refused.message).toContain('A1 is a date');
      }
    },
  );

  it('is a number to the functions of the spreadsheet, and its neighbors are numbers to ours', () => {
    const value = calculated('d-mmm');
    expect(value(1)).toBe(46_151);
    expect(value(3)).toBeCloseTo(10 * Math.tan(Math.PI / 18), 12);
  });

  it.each(['0.00', '# ?/8', '0 %', '0.000" mm"', '@'])('is none in the format %s', (format) => {
    expect(calculated(format)(0)).toBeGreaterThan(0);
  });
});
