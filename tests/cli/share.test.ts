import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
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
  expect(out).toMatch(/Seat!B1 +native +=MOLD\.SEAT\.FORCE\(100,A1,0\)/);
  expect(out).toContain('1 formulas: 1 native. Written to');
  expect(status).toBe(0);
  const { out: recalculated } = await run('recalc', path('copy.xlsx'));
  expect(recalculated).toMatch(/Seat +1 +0 +0/);
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
