import { mkdtempSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { readWorkbook } from '../../src/package';
import { run } from './run';

const folder = mkdtempSync(join(tmpdir(), 'moldsheet-new-'));

describe('moldsheet new', () => {
  it('writes a design of the sections asked for, which share their inputs, and a sheet to hand on', async () => {
    const path = join(folder, 'design.xlsx');
    const made = await run('new', path, '--units', 'mm', '--sections', 'plate,seat', '--title', 'Cap');
    expect(made).toMatchObject({ status: 0, err: '' });
    expect(made.out).toContain('Taper seat, Plate and pillars');
    const { sheets, names } = readWorkbook(
      await readFile(path),
      worksheetFunctions.map(({ id }) => id),
    );
    expect(sheets.map(({ name }) => name)).toEqual(['Design', 'Hand on', 'Lists']);
    expect(sheets[0]?.cells.find(({ row, column }) => row + column === 0)?.value).toBe('Cap');
    expect(names.filter(({ name }) => name.startsWith('cavity_pressure'))).toHaveLength(1);
    const verdict = sheets[0]?.cells.find(({ value }) => value === 'The whole design');
    const word = sheets[0]?.cells.find(({ row, column }) => row === verdict?.row && column === 3);
    expect(word?.value).toBe('✓ holds');
  });

  it('lists its sections and names them where one is not there', async () => {
    expect((await run('new', '--list')).out).toContain('the draft: a steep one sinks less');
    const wrong = await run('new', join(folder, 'x.xlsx'), '--sections', 'seat,sprung');
    expect(wrong).toMatchObject({ status: 2 });
    expect(wrong.err).toContain('There is no section sprung; there are press, runner, seat, spring');
    expect((await run('new')).err).toContain('Name the workbook to write');
  });

  it('never writes over a file, nor does a form without a workbook', async () => {
    const path = join(folder, 'mine.xlsx');
    await writeFile(path, 'a design of hours');
    for (const argv of [
      ['new', path, '--sections', 'seat'],
      ['form', 'SEAT.FORCE', '-o', path],
    ]) {
      const { status, err } = await run(...argv);
      expect(status).toBe(2);
      expect(err).toContain('mine.xlsx is there already and would be lost: name another file');
    }
    expect(await readFile(path, 'utf8')).toBe('a design of hours');
  });
});
