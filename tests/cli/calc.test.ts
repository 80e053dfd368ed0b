import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from './run';

/** F/(sin 5° + 0.15 cos 5°) of the free body, for 1000 and 2000. */
const FORCE = 1000 / (Math.sin(Math.PI / 36) + 0.15 * Math.cos(Math.PI / 36));

describe('calc', () => {
  let folder = '';
  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), 'calc-'));
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it('prints a value with all its digits', async () => {
    expect(await run('calc', '=1/3')).toEqual({ status: 0, out: '0.3333333333333333', err: '' });
    const { out } = await run('calc', '=MOLD.SEAT.FORCE(1000,5,0.15,"mm")');
    expect(Number(out)).toBeCloseTo(FORCE, 9);
  });

  it('takes a formula without its equals sign too', async () => {
    expect((await run('calc', 'SUM(1,2)')).out).toBe('3');
  });

  it('prints rows by line and cells by tab', async () => {
    expect((await run('calc', '=SEQUENCE(2,3)')).out).toBe('1\t2\t3\n4\t5\t6');
  });

  it('shows an error by its code, says why beside it, and has status 1', async () => {
    const { status, out, err } = await run('calc', '=MOLD.SEAT.FORCE(1000,0,0.15)');
    expect([status, out]).toEqual([1, '#VALUE!']);
    expect(err).toMatch(/draft/);
  });

  it('finds functions of several families, by any of their names and in any case', async () => {
    const { out } = await run('calc', '=mold.edge.centre(1,0.4,"left")=Mold.Edge.Center(1,0.4,"left")');
    expect(out).toBe('TRUE');
    expect((await run('calc', '=MOLD.SEAT.FREEDRAFT(0.1)>MOLD.EDGE.CENTER(1,0.4,"left")')).out).toBe('TRUE');
  });

  it('works out functions about functions, whatever family these are of', async () => {
    const { status, out } = await run('calc', '=INDEX(MOLD.SHOW.SOURCE("TAP"&".DRILL"),1,1)');
    expect([status, out]).toEqual([0, expect.stringMatching(/\w+/)]);
  });

  it('names what an unknown function may be, from all that there are', async () => {
    const { status, err } = await run('calc', '=MOLD.SEAT.FORCES(1)+FORCE(2)');
    expect([status, err]).toEqual([1, expect.stringContaining('MOLD.SEAT.FORCE')]);
    expect((await run('calc', '=SEAT.FORCE(1,5,0.1)')).err).toContain('MOLD.SEAT.FORCE');
  });

  it('gives JSON with numbers as numbers', async () => {
    const { out } = await run('calc', '--json', '=MOLD.SEAT.FORCE({1000;2000},5,0.15,"mm")');
    const { formula, value } = JSON.parse(out) as { formula: string; value: number[][] };
    expect(formula).toBe('=MOLD.SEAT.FORCE({1000;2000},5,0.15,"mm")');
    expect(value).toHaveLength(2);
    expect(value[0]?.[0]).toBeCloseTo(FORCE, 9);
    expect(value[1]?.[0]).toBeCloseTo(2 * FORCE, 9);
  });

  it('gives an error in JSON with its message, alone and among other cells', async () => {
    const { status, out } = await run('calc', '--json', '=MOLD.SEAT.FORCE(1000,0,0.15)');
    expect(status).toBe(1);
    expect(JSON.parse(out)).toEqual({
      formula: '=MOLD.SEAT.FORCE(1000,0,0.15)',
      error: '#VALUE!',
      message: expect.stringContaining('draft') as string,
    });
    const among = await run('calc', '--json', '=MOLD.SEAT.FORCE(1000,{5,0},0.15)');
    expect((JSON.parse(among.out) as { value: unknown[][] }).value[0]).toEqual([
      expect.any(Number),
      { error: '#VALUE!', message: expect.stringContaining('draft') as string },
    ]);
  });

  it('names the nearest functions for one that there is not', async () => {
    expect((await run('calc', '=MOLD.SEAT.FORZE(1)')).err).toMatch(
      /no function MOLD\.SEAT\.FORZE.*MOLD\.SEAT\.FORCE/,
    );
  });

  it('works out text, conditions, LET, LAMBDA and native functions around ours', async () => {
    const { out } = await run(
      'calc',
      '=LET(f,MAP({1000;2000},LAMBDA(p,MOLD.SEAT.FORCE(p,5,0.15,"mm"))),TEXT(SUM(f)/2,"0.00")&IF(TRUE," N",""))',
    );
    expect(out).toBe(`${(1.5 * FORCE).toFixed(2)} N`);
  });

  it('reads one formula a line and prints one line of JSON for each, in order', async () => {
    const file = join(folder, 'formulas.txt');
    writeFileSync(file, '=1+1\r\n\n=1/0\n=SEQUENCE(1,2)\n="é"');
    const { status, out } = await run('calc', '--json', '--file', file);
    expect(status).toBe(0);
    expect(out.split('\n').map((line) => JSON.parse(line) as unknown)).toEqual([
      { formula: '=1+1', value: 2 },
      { formula: '=1/0', error: '#DIV/0!', message: expect.any(String) as string },
      { formula: '=SEQUENCE(1,2)', value: [[1, 2]] },
      { formula: '="é"', value: 'é' },
    ]);
  });

  it('says in one line what is wrong with the command, and has status 2', async () => {
    for (const argv of [
      ['calc'],
      ['calc', '=1', '--file', 'x'],
      ['calc', '=1', '=2'],
      ['calc', '--jsn', '=1'],
      ['calc', '--file', join(folder, 'none.txt')],
      ['calc', '--file', folder],
    ]) {
      const { status, out, err } = await run(...argv);
      expect([argv, status, out]).toEqual([argv, 2, '']);
      expect(err).toMatch(/^moldsheet: [^\n]+$/);
    }
  });
});
