import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import type { SheetDescription } from '../../src/package/description';
import { newWorkbook } from '../../src/package/author';
import type { Sheet } from '../../src/package/model';
import { onePage } from '../../src/share/onePage';
import { run } from '../cli/run';

const TEMPLATE =
  '<title>{{file}}</title><p>{{date}} {{basis}}</p>{{sheets}}<i>{{workbook}}</i><script>{{other}}</script>';

const page = (sheets: readonly SheetDescription[]): string =>
  onePage(newWorkbook({ sheets }), worksheetFunctions, {
    file: 'a & <b>.xlsx',
    date: '2026-01-31',
    template: TEMPLATE,
  });

describe('a one-file page', () => {
  it('holds the calculated values of every sheet that can be seen, and takes no text for markup', () => {
    const html = page([
      { name: 'One', cells: { A1: 2, A2: { formula: 'A1*21' }, A3: '<script>{{file}}' } },
      { name: 'Two', cells: { A1: { formula: 'IF(One!A1>1,"more","less")' } } },
      { name: 'Three', state: 'hidden', cells: { A1: 'unseen' } },
    ]);
    expect(html).toContain('>42</td>');
    expect(html).toContain('>more</td>');
    expect(html).not.toContain('unseen');
    expect(html).toContain('<title>a &amp; &lt;b&gt;.xlsx</title><p>2026-01-31 basis');
    expect(html).toContain('&lt;script&gt;{{file}}</td>');
    expect(html).toContain('{{other}}');
  });

  it('is not made of a workbook that shows nothing', () => {
    expect(() => page([{ name: 'One', cells: {} }])).toThrow('The workbook shows nothing');
  });

  it('is not made of more cells than a phone can show', () => {
    const [sheet] = newWorkbook({ sheets: [{ name: 'One', cells: { A1: 1 } }] }).sheets;
    const cells = Array.from({ length: 60_001 }, (_, row) => ({ row, column: 0, value: row, style: 0 }));
    const workbook = { ...newWorkbook(), sheets: [{ ...(sheet as Sheet), cells }] };
    expect(() => onePage(workbook, [], { file: '', date: '', template: '' })).toThrow('shows 60001 cells');
  });
});

describe('share --as page', () => {
  it.each([
    [['samples/push-out-insert.xlsx', '-o', 'out.xlsx'], 'name it .html'],
    [['samples/push-out-insert.xlsx', '-o', 'out.html', '--let'], '--let is for workbooks'],
    [['samples/none.xlsx', '-o', 'out.html'], 'there is no such file'],
    [['package.json', '-o', 'out.html'], 'package.json cannot be read'],
  ])('refuses %j in words', async (args, words) => {
    const { status, err } = await run('share', ...args, '--as', 'page');
    expect(status).toBe(2);
    expect(err).toContain(words);
  });
});
