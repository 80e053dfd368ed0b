import { linkSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { run } from './run';
import { xlsx } from './xlsx';

let folder = '';
const path = (name: string): string => join(folder, name);
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'moldsheet-share-'));
  writeFileSync(
    path('seat.xlsx'),
    xlsx(
      'Seat',
      '<row r="1"><c r="A1"><v>30</v></c><c r="B1"><f>_xldudf_MOLD_SEAT_FORCE(100,A1,0)</f><v>200</v></c></row>',
    ),
  );
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

it('shares a workbook and says what became of each formula', async () => {
  const { status, out } = await run('share', path('seat.xlsx'), '-o', path('copy.xlsx'), '--basis');
  expect(out).toMatch(/native +1 +Seat!B1/);
  expect(out).toMatch(/1 formula: 1 native\.\nWritten to/);
  expect(status).toBe(0);
  const { out: recalculated } = await run('recalc', path('copy.xlsx'));
  expect(recalculated).toMatch(/Seat +1 +0 +0/);
});

it('tells what is frozen and what is refused once a reason, with its cells, before it writes', async () => {
  const cell = (at: string, formula: string): string =>
    `<c r="${at}"><f>_xldudf_MOLD_${formula}</f><v>0</v></c>`;
  const rows = [1, 2].map(
    (row) =>
      `<row r="${row}">${cell(`A${row}`, 'HEAT_GROWTH(4,"unobtainium",60)')}${cell(`B${row}`, 'SHOW_SOURCE("SEAT.FORCE")')}</row>`,
  );
  writeFileSync(path('odd.xlsx'), xlsx('Seat', rows.join('')));
  const { out } = await run('share', path('odd.xlsx'), '-o', path('odd copy.xlsx'));
  expect(out).toMatch(/refused +2 +Seat!A1, A2 +it is refused as it stands: /);
  expect(out).toMatch(/frozen +2 +Seat!B1, B2 +SHOW\.SOURCE runs or explains/);
  expect(out.indexOf('2 refused, 2 frozen')).toBeLessThan(out.indexOf('Written to'));
});

it('never takes the place of the workbook that it copies, under whatever path', async () => {
  const before = readFileSync(path('seat.xlsx'));
  linkSync(path('seat.xlsx'), path('same.xlsx'));
  for (const target of ['seat.xlsx', 'same.xlsx']) {
    const { status, err } = await run('share', path('seat.xlsx'), '-o', path(target));
    expect(status).toBe(2);
    expect(err).toContain('is the workbook itself, and its formulas would be lost');
  }
  const printed = await run('print', path('seat.xlsx'), '-o', path('seat.xlsx'));
  expect(printed.err).toContain('What is printed is an HTML file: name it .html.');
  expect(readFileSync(path('seat.xlsx'))).toEqual(before);
  const macros = await run('share', path('seat.xlsx'), '-o', path('copy.xlsm'));
  expect(macros.err).toContain('holds no macros: name the file to write .xlsx');
});

it('turns a copy back', async () => {
  await run('share', path('seat.xlsx'), '-o', path('copy.xlsx'));
  const { status, out } = await run('share', '--restore', path('copy.xlsx'), '-o', path('back.xlsx'));
  expect(out).toContain('Nothing was changed in the copy.');
  expect(out).toContain('1 formulas put back');
  expect(status).toBe(0);
});

it.each([
  [['share', 'seat.xlsx'], 'Name the file to write with -o.'],
  [
    ['share', 'seat.xlsx', '-o', 'x.xlsx', '--as', 'gold'],
    '--as takes native, values, both or page, not gold.',
  ],
  [['share', '--restore', 'seat.xlsx', '-o', 'x.xlsx'], 'carries no original formulas'],
  [['share', 'gone.xlsx', '-o', 'x.xlsx'], 'there is no such file'],
  [['check', 'gone.xlsx'], 'there is no such file'],
])('answers %j in one line', async (argv, wanted) => {
  const { status, err } = await run(...argv.map((one) => (one.endsWith('.xlsx') ? path(one) : one)));
  expect(err).toContain(wanted);
  expect(err).not.toContain('\n');
  expect(status).toBe(2);
});

it('checks a workbook: what differs from the stored results ends with status 1', async () => {
  const good = await run('check', path('seat.xlsx'));
  expect(good.out).not.toContain('Results that differ');
  expect(good.out).toContain('usually 0.05 to 0.6');
  expect(good.status).toBe(0);
  writeFileSync(
    path('old.xlsx'),
    xlsx('Seat', '<row r="1"><c r="B1"><f>_xldudf_MOLD_SEAT_FORCE(100,30,0)</f><v>199</v></c></row>'),
  );
  const old = await run('check', path('old.xlsx'));
  expect(old.out).toMatch(/Seat!B1 +199 +200/);
  expect(old.status).toBe(1);
});
