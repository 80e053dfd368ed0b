import { describe, expect, it } from 'vitest';
import { setDecimalSign } from '../../src/cells/decimalSign';
import { worksheetFunctions } from '../../src/call/functions';
import { newWorkbook } from '../../src/package/author';
import { Desk } from '../../src/onefile/desk';
import { readEntry } from '../../src/onefile/readEntry';
import { valueWords, workHtml } from '../../src/work/workHtml';

const place = (row: number, column: number) => ({ sheet: 0, row, column });

const desk = (): Desk =>
  new Desk(
    newWorkbook({
      sheets: [
        {
          name: 'A',
          cells: {
            A1: 100,
            A2: 5,
            A3: 'oiled',
            B1: { formula: 'MOLD.SEAT.FORCE(A1,A2,0.15)' },
            B2: { formula: 'A1*2' },
          },
          validations: [
            {
              cells: 'A1:A2',
              accepts: 'AND(A1>=1,A1<=500)',
              refusal: { style: 'stop', title: 'Push', text: 'From 1 to 500.' },
            },
            { cells: 'A3', choices: ['oiled', 'dry'] },
          ],
        },
      ],
    }),
    worksheetFunctions,
  );

describe('an entry', () => {
  it.each([
    ['0.25', 'General', 0.25],
    ['1-1/2', 'General', 1.5],
    ['10-24', 'General', '10-24'],
    ['0.5 mm', 'General', '0.5 mm'],
    ['12', '@', '12'],
    [' ', 'General', null],
    ['true', 'General', true],
    ['=A1', 'General', undefined],
  ])('%j in the format %s is %j', (text, format, value) => {
    expect(readEntry(text, format)).toBe(value);
  });

  it('is read with a decimal comma where that is the sign', () => {
    setDecimalSign(',');
    expect(['0,25', '0,5 mm', '1.5', '5/8'].map((text) => readEntry(text, 'General'))).toEqual([
      0.25,
      '0.5 mm',
      1.5,
      0.625,
    ]);
    expect(valueWords(0.25)).toBe('0,25');
    setDecimalSign('.');
    expect([readEntry('0,25', 'General'), valueWords(0.25)]).toEqual(['0,25', '0.25']);
  });
});

describe('the page’s workbook', () => {
  it('follows an input, and says which were changed', () => {
    const one = desk();
    expect(one.enter(place(0, 0), '200')).toBeUndefined();
    expect(one.value(place(1, 1))).toBe(400);
    expect(one.changed).toEqual([{ ...place(0, 0), was: 100, is: 200 }]);
    one.putBack();
    expect(one.value(place(1, 1))).toBe(200);
    expect(one.changed).toEqual([]);
  });

  it('keeps out what the rule of the cell stops, in the words of the workbook', () => {
    const one = desk();
    expect(one.enter(place(0, 0), '501')).toEqual({ style: 'stop', text: 'Push: From 1 to 500.' });
    expect(one.value(place(0, 0))).toBe(100);
    expect(one.enter(place(0, 0), '=1+1')?.text).toContain('A formula cannot be typed here');
    expect(one.choices(place(2, 0))).toEqual(['oiled', 'dry']);
  });

  it('shows the work of a cell with its equations and sources', async () => {
    const html = await workHtml(desk(), place(0, 1));
    expect(html).toContain('<h3>MOLD.SEAT.FORCE</h3>');
    expect(html).toContain('<math');
    expect(html).toContain('from A2');
    expect(html).toContain('<h4>Sources</h4>');
    expect(await workHtml(desk(), place(0, 0))).toBe('');
  });
});
