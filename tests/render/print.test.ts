import { describe, expect, it } from 'vitest';
import { columnLetters } from '../../src/cells/address';
import { CellError } from '../../src/cells/value';
import { newWorkbook } from '../../src/package/author';
import { fit, printHtml } from '../../src/render/printPage';
import { shownText } from '../../src/render/shownText';

const roomy = (): boolean => true;
const shown = (
  value: Parameters<typeof shownText>[0],
  format = 'General',
  fits: (text: string) => boolean = roomy,
) => shownText(value, format, fits, false).text;

describe('a cell shows', () => {
  it.each([
    [1.5, 'General', '1.5'],
    [0.1 + 0.2, 'General', '0.3'],
    [1.23456, '0.000" mm"', '1.235 mm'],
    [0.625, '# ?/8', '5/8'],
    [0.75, '0 %', '75 %'],
    [45_000, 'yyyy-mm-dd', '2023-03-15'],
    [true, 'General', 'TRUE'],
    ['10-24', '@', '10-24'],
    [null, 'General', ''],
    [new CellError('#N/A', 'no such drill'), 'General', '#N/A'],
  ])('%s in the format %s as %s', (value, format, text) => {
    expect(shown(value, format).trim()).toBe(text);
  });

  it('fewer decimals where the column is narrow, and signs where not even the whole number fits', () => {
    const fits = (text: string): boolean => text.length <= 6;
    expect(shown(3.14159265, 'General', fits)).toBe('3.1416');
    expect(shown(1234567.5, '#,##0.00', fits)).toBe('######');
  });

  it('a date that counts from 1904 as the day it is', () => {
    expect(shownText(45_000 - 1462, 'yyyy-mm-dd', roomy, true).text).toBe('2023-03-15');
  });

  it('signs where a day before the first is asked for, as worksheets do', () => {
    expect(shown(-5, 'yyyy-mm-dd')).toBe('########');
  });
});

describe('a sheet on paper', () => {
  it('is as large as fits the width', () => {
    expect(fit(720, 500, 'Letter')).toMatchObject({ landscape: false, zoom: 1 });
    expect(fit(1440, 500, 'Letter').zoom).toBeCloseTo(960 / 1440, 2);
  });

  it('of 200 rows and 30 columns stays on two pages', () => {
    const { zoom, landscape } = fit(30 * 69, 200 * 20, 'Letter');
    const height = (landscape ? 816 : 1056) - 2 * 92;
    expect(Math.ceil((200 * 20 * zoom) / height)).toBeLessThanOrEqual(2);
  });

  const book = newWorkbook({
    sheets: [
      {
        name: 'A & B',
        merges: ['A1:B1'],
        rows: { 3: 0 },
        cells: {
          A1: 'Wall <thick>',
          A2: 1.5,
          B2: { formula: 'A2*2', value: 3 },
          A3: 'hidden',
          A4: 'c1 " stays',
          B4: "5'",
        },
        print: { paper: 'A4', landscape: true, titleRows: '1:1' },
      },
      { name: 'Hidden', state: 'hidden', cells: { A1: 'secret' } },
    ],
  });

  it('shows texts as they are, merged cells as one, and nothing that is hidden', () => {
    const html = printHtml(book, { file: 'a.xlsx', date: '2026-01-01' });
    expect(html).toContain('Wall &lt;thick&gt;');
    expect(html).toContain('colspan="2"');
    expect(html).toContain('c1 &quot; stays');
    expect(html).not.toContain('>hidden<');
    expect(html).not.toContain('secret');
    expect(html).toMatch(/<thead>.*Wall/s);
  });

  it('asks for nothing from elsewhere', () => {
    expect(printHtml(book, { file: 'a.xlsx', date: '2026-01-01' })).not.toMatch(
      /(?:src|href)=|url\(|@import|<script/,
    );
  });

  it('shows the values of now where the workbook was calculated', () => {
    const html = printHtml(book, {
      file: 'a.xlsx',
      date: '2026-01-01',
      value: (_, row, column) => (row === 1 && column === 1 ? 42 : undefined),
      overlays: (_, row) => (row === 1 ? [{ font: {}, fill: '#ABCDEF', borders: {} }] : []),
    });
    expect(html).toContain('>42<');
    expect(html).toContain('#ABCDEF');
  });

  it('shows a number without a format with as many decimals as fit, not set smaller', () => {
    const narrow = newWorkbook({ sheets: [{ name: 'N', cells: { A1: 4.285714285714 } }] });
    const html = printHtml(narrow, { file: 'n.xlsx', date: '2026-01-01' });
    const [, css = '', text = ''] = /<td class="(\w+)"[^>]*>(4\.\d+)</.exec(html) ?? [];
    expect(text).toMatch(/^4\.2857\d*$/);
    expect(text.length).toBeLessThan('4.285714286'.length);
    expect(new RegExp(`\\.${css} \\{[^}]*font-size: [0-6]`).test(html)).toBe(false);
  });

  it('is fitted to the paper that the file asks for', () => {
    const cells = Object.fromEntries(Array.from({ length: 16 }, (_, i) => [`${columnLetters(i)}1`, i]));
    const zoomOf = (asked: 'A4' | 'Letter', options: object) => {
      const sheet = newWorkbook({ sheets: [{ name: 'N', cells, print: { paper: asked, landscape: true } }] });
      return /zoom: ([\d.]+)/.exec(printHtml(sheet, { file: 'n.xlsx', date: '2026-01-01', ...options }))?.[1];
    };
    expect(zoomOf('A4', {})).toBe(zoomOf('Letter', { paper: 'A4' }));
    expect(zoomOf('A4', {})).not.toBe(zoomOf('Letter', {}));
  });

  it('has the decimal comma of the reader where that is asked for', () => {
    const html = printHtml(book, { file: 'a.xlsx', date: '2026-01-01', decimalComma: true });
    expect(html).toContain('>1,5<');
    expect(html).not.toContain('>1.5<');
  });

  it('says so where there is nothing to print', () => {
    expect(printHtml(newWorkbook(), { file: 'a.xlsx', date: '' })).toContain('nothing to print');
  });
});
