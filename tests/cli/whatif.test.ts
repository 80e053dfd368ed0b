import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { run } from './run';
import { xlsx } from './xlsx';

const folder = mkdtempSync(join(tmpdir(), 'whatif-'));
const input = join(folder, 'in.xlsx');
const target = join(folder, 'out.csv');

const text = (address: string, words: string) =>
  `<c r="${address}" t="inlineStr"><is><t>${words}</t></is></c>`;

afterAll(() => {
  rmSync(folder, { recursive: true });
});

beforeEach(() => {
  rmSync(target, { force: true });
  // The stored results are old on purpose: the commands must not trust them.
  writeFileSync(
    input,
    xlsx(
      'Insert',
      `<row r="1">${text('A1', 'Draft')}<c r="B1"><v>5</v></c>${text('C1', 'deg')}</row>` +
        `<row r="2">${text('A2', 'Push')}<c r="B2"><v>1000</v></c>${text('C2', 'N')}</row>` +
        `<row r="3">${text('A3', 'Force')}<c r="B3"><f>_xldudf_MOLD_SEAT_FORCE(B2,B1,0,"mm")</f><v>1</v></c><c r="C3"><f>IF(TRUE,"N","")</f><v>0</v></c></row>` +
        `<row r="4">${text('A4', 'Half')}<c r="B4"><f>B3/2</f><v>1</v></c></row>`,
    ),
  );
});

describe('whatif', () => {
  it('prints a table with headings, units and a note of what was varied', async () => {
    const { status, out, err } = await run(
      'whatif',
      input,
      '--set',
      'Insert!B1=30,15',
      '--set',
      'B2=1000:3000:1000',
      '--read',
      'B3:B4',
    );
    expect([status, err]).toEqual([0, '']);
    // Without friction the force is F/sin α: 2 F at 30° and (√6 + √2) F at 15°.
    expect(out).toMatch(/^Draft \(deg\) +Push \(N\) +Force \(N\) +Half$/m);
    expect(out.match(/^ +\d.*$/gm)?.map((line) => line.trim().split(/ +/).map(Number))).toEqual([
      [30, 1000, 2000, 1000],
      [30, 2000, 4000, 2000],
      [30, 3000, 6000, 3000],
      [15, 1000, 3863.7, 1931.85],
      [15, 2000, 7727.41, 3863.7],
      [15, 3000, 11591.1, 5795.55],
    ]);
    expect(out).toMatch(/^Varied: Draft, deg \(Insert!B1\): 30, 15\. Outside of this table it is 5 deg\.$/m);
    expect(out).toMatch(/^Read: Force, N \(Insert!B3\); Half \(Insert!B4\)\.$/m);
  });

  it('writes comma-separated values with all digits, and leaves the workbook alone', async () => {
    const before = readFileSync(input);
    const { status, out } = await run(
      'whatif',
      input,
      '--set',
      'Insert!B1=30,15',
      '--read',
      'Insert!B3',
      '-o',
      target,
    );
    expect(status).toBe(0);
    expect(out).toContain(`2 variations written to ${target}.`);
    const [heads, first, second, end] = readFileSync(target, 'utf8').split('\r\n');
    expect([heads, end]).toEqual(['Draft (deg),Force (N)', '']);
    expect(Number(first?.split(',')[1])).toBeCloseTo(2000, 9);
    expect(Number(second?.split(',')[1])).toBeCloseTo(1000 * (Math.sqrt(6) + Math.sqrt(2)), 9);
    expect(readFileSync(input)).toEqual(before);
    expect(readdirSync(folder).sort()).toEqual(['in.xlsx', 'out.csv']);
  });

  it('has status 1 where a result is in error, and says why', async () => {
    const { status, out } = await run('whatif', input, '--set', 'Insert!B1=0,30', '--read', 'Insert!B3');
    expect(status).toBe(1);
    expect(out).toMatch(/#VALUE!/);
    expect(out).toMatch(/^#VALUE! draft /m);
  });

  it('varies a cell with a formula only when told so', async () => {
    const argv = ['whatif', input, '--set', 'Insert!B3=10,20', '--read', 'Insert!B4'];
    expect(await run(...argv)).toMatchObject({
      status: 2,
      err: expect.stringMatching(/Insert!B3 holds a formula/) as string,
    });
    expect((await run(...argv, '--over-formulas')).out).toMatch(/^ +20 +10$/m);
  });

  it.each([
    [['whatif', 'none.xlsx', '--set', 'A1=1', '--read', 'B1']],
    [['whatif', input, '--read', 'Insert!B3']],
    [['whatif', input, '--set', 'Insert!B1=1']],
    [['whatif', input, '--set', 'Insert!B1', '--read', 'Insert!B3']],
    [['whatif', input, '--set', 'Insert!B1=', '--read', 'Insert!B3']],
    [['whatif', input, '--set', 'Insert!B1=1:2', '--read', 'Insert!B3']],
    [['whatif', input, '--set', 'Nowhere!B1=1', '--read', 'Insert!B3']],
    [['whatif', input, '--set', 'Insert!B1=1', '--read', 'Nowhere!B3']],
    [['whatif', input, '--set', 'Insert!B1=1', '--read', 'Insert!B3:B']],
    [['whatif', input, '--set', 'Insert!B1=1', '--set', 'Insert!B1=2', '--read', 'Insert!B3']],
    [['whatif', input, '--set', 'B1=1', '--set', 'B2=2', '--set', 'A9=3', '--read', 'Insert!B3']],
    [['whatif', input, '--set', 'B1=1', '--read', 'B3', '-o', join(folder, 'no', 'where.csv')]],
    [['solve', input, '--set', 'B1=1..2', '--read', 'B3']],
    [['solve', input, '--set', 'B1=1..2', '--read', 'B3', '--target', 'x']],
    [['solve', input, '--set', 'B1=1', '--read', 'B3', '--target', '1']],
    [['solve', input, '--set', 'B1=1..2', '--read', 'B3:B4', '--target', '1']],
    [['solve', input, '--set', 'B1=-1..2', '--read', 'B3', '--target', '1']],
  ])('says in one line what is wrong with %j', async (argv) => {
    const { status, out, err } = await run(...argv);
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(/^moldsheet: [^\n]+\.$/);
    expect(err).not.toMatch(/fault of the program/);
  });
});

describe('solve', () => {
  it('finds the value at which a cell shows the target', async () => {
    const argv = ['solve', input, '--set', 'Insert!B1=10..40', '--read', 'Insert!B3', '--target', '2000'];
    const { status, out, err } = await run(...argv);
    expect([status, err]).toEqual([0, '']);
    expect(out).toMatch(/^Draft \(Insert!B1\): 30 deg$/m);
    expect(out).toMatch(/^Force \(Insert!B3\): 2000 N$/m);
    const { value, result } = JSON.parse((await run(...argv, '--json')).out) as {
      value: number;
      result: number;
    };
    expect(value).toBeCloseTo(30, 8);
    expect(result).toBeCloseTo(2000, 6);
  });

  it('refuses a target that is not between the ends by what they give', async () => {
    const { status, err } = await run('solve', input, '--set', 'B1=15..30', '--read', 'B3', '--target', '0');
    expect(status).toBe(2);
    expect(err).toBe(
      'moldsheet: 0 is not between what the ends give: Insert!B3 is 3863.7 at 15 and 2000 at 30.',
    );
  });
});
