import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { readWorkbook } from '../../src/package';
import { run } from './run';
import { xlsx } from './xlsx';

const folder = mkdtempSync(join(tmpdir(), 'recalc-'));
const input = join(folder, 'in.xlsx');
const target = join(folder, 'out.xlsx');

afterAll(() => {
  rmSync(folder, { recursive: true });
});

/** Values of a written workbook by row and column. */
function valuesIn(path: string): Map<string, unknown> {
  const book = readWorkbook(
    readFileSync(path),
    worksheetFunctions.map(({ id }) => id),
  );
  return new Map(book.sheets[0]?.cells.map(({ row, column, value }) => [`${row} ${column}`, value]));
}

describe('recalc', () => {
  beforeEach(() => {
    rmSync(target, { force: true });
    writeFileSync(
      input,
      xlsx(
        'Insert',
        '<row r="1"><c r="A1"><v>1000</v></c><c r="B1"><f>_xldudf_MOLD_SEAT_FORCE(A1,30,0,"mm")</f><v>5</v></c></row>' +
          '<row r="2"><c r="A2"><v>2</v></c><c r="B2"><f>B1*A2</f><v>10</v></c><c r="C2"><f>A2*2</f><v>4</v></c></row>',
      ),
    );
  });

  it('writes the new values and prints what there is', async () => {
    const { status, out, err } = await run('recalc', input, '-o', target);
    expect([status, err]).toEqual([0, '']);
    expect(out).toMatch(/^Sheet +Formulas +Changed +Errors +Kept$/m);
    expect(out).toMatch(/^Insert +3 +2 +0 +0$/m);
    const values = valuesIn(target);
    // Without friction the force is F/sin 30° = 2 F.
    expect(values.get('0 1')).toBeCloseTo(2000, 9);
    expect(values.get('1 1')).toBeCloseTo(4000, 9);
  });

  it('leaves the workbook that it reads as it was, also when none is written', async () => {
    const before = readFileSync(input);
    expect((await run('recalc', input)).out).toMatch(/Nothing was written/);
    await run('recalc', input, '-o', target);
    expect(readFileSync(input)).toEqual(before);
    expect(readdirSync(folder).sort()).toEqual(['in.xlsx', 'out.xlsx']);
  });

  it('may write over the workbook that it reads, when told so', async () => {
    expect((await run('recalc', input, '-o', input)).status).toBe(0);
    expect(valuesIn(input).get('0 1')).toBeCloseTo(2000, 9);
    expect((await run('recalc', input)).out).toMatch(/^Insert +3 +0 +0 +0$/m);
  });

  it('lists cells in error with their reason, writes all the same, and has status 1', async () => {
    writeFileSync(
      input,
      xlsx(
        'Two words',
        '<row r="1"><c r="A1"><f>_xldudf_MOLD_SEAT_FORCE(1000,0,0.15)</f></c><c r="B1"><f>A1+1</f></c><c r="C1"><f>1+1</f></c></row>',
      ),
    );
    const { status, out } = await run('recalc', input, '-o', target);
    expect(status).toBe(1);
    expect(out).toMatch(/^Two words +3 +3 +2 +0$/m);
    expect(out).toMatch(/^Two words!A1 +#VALUE! +draft is 0/m);
    expect(out).toMatch(/^Two words!B1 +#VALUE! +'Two words'!A1: draft is 0/m);
    expect(valuesIn(target).get('0 2')).toBe(2);
  });

  it('lists results in error that another cell spills, and has status 1', async () => {
    writeFileSync(
      input,
      xlsx(
        'Insert',
        '<row r="1"><c r="A1"><f>_xldudf_MOLD_SEAT_FORCE(B1:B2,5,0.15)</f></c><c r="B1"><v>400</v></c></row>' +
          '<row r="2"><c r="B2"><v>-1</v></c></row>',
      ),
    );
    const { status, out } = await run('recalc', input);
    expect(status).toBe(1);
    expect(out).toMatch(/^Insert!A2 +#VALUE! +push is -1 lbf/m);
  });

  it.each(['recalc', 'check'])(
    '%s says that a workbook calculates with its numbers as shown',
    async (command) => {
      const parts = unzipSync(readFileSync(input));
      const book = 'xl/workbook.xml';
      const set = (value: string) =>
        strToU8(
          strFromU8(parts[book] ?? new Uint8Array()).replace(
            '</sheets>',
            `$&<calcPr fullPrecision="${value}"/>`,
          ),
        );
      writeFileSync(input, zipSync({ ...parts, [book]: set('0') }));
      expect((await run(command, input)).out).toMatch(/numbers as they are shown, rounded/);
      writeFileSync(input, zipSync({ ...parts, [book]: set('1') }));
      expect((await run(command, input)).out).not.toMatch(/as they are shown/);
    },
  );

  it('keeps the value of a formula that is not calculated here, and says why', async () => {
    writeFileSync(
      input,
      xlsx(
        'One',
        '<row r="1"><c r="A1"><f>FORECAST.ETS(1,2,3)</f><v>5</v></c><c r="B1"><f>A1*2</f><v>9</v></c></row>',
      ),
    );
    const { status, out } = await run('recalc', input, '-o', target);
    expect(status).toBe(0);
    expect(out).toMatch(/^One +2 +1 +0 +1$/m);
    expect(out).toMatch(/^One!A1 +5 +There is no function or name FORECAST\.ETS\.$/m);
    expect(out).toContain('Values changed: 1, to errors 0; kept: 1.');
    expect([valuesIn(target).get('0 0'), valuesIn(target).get('0 1')]).toEqual([5, 10]);
  });

  it.each([
    ['that is no workbook', 'text'],
    ['that is cut short', xlsx('A', '').slice(0, 400)],
    ['that is empty', ''],
  ])('refuses a file %s in one line, with status 2, and writes nothing', async (_, content) => {
    writeFileSync(input, content);
    const { status, out, err } = await run('recalc', input, '-o', target);
    expect([status, out]).toEqual([2, '']);
    expect(err).toMatch(/^moldsheet: .*in\.xlsx cannot be read[^\n]+$/);
    expect(readdirSync(folder)).toEqual(['in.xlsx']);
  });

  it('refuses files that are not there, or cannot be written', async () => {
    for (const argv of [
      ['recalc'],
      ['recalc', join(folder, 'none.xlsx')],
      ['recalc', folder],
      ['recalc', input, '-o', join(folder, 'no', 'such', 'folder.xlsx')],
    ]) {
      const { status, err } = await run(...argv);
      expect([argv, status]).toEqual([argv, 2]);
      expect(err).toMatch(/^moldsheet: [^\n]+$/);
    }
  });
});
