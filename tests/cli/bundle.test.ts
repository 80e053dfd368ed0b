import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const built = resolve(__dirname, '../../dist/moldsheet.cjs');

/** What a person runs: one file, and nothing beside it. */
describe('the built command line', () => {
  const folder = mkdtempSync(join(tmpdir(), 'bundle-'));
  const bundle = join(folder, 'moldsheet.cjs');
  const run = (...argv: string[]) => {
    const { status, stdout, stderr } = spawnSync(process.execPath, [bundle, ...argv], {
      encoding: 'utf8',
      cwd: folder,
    });
    return { status, out: stdout, err: stderr };
  };

  beforeAll(() => {
    if (!existsSync(built)) throw new Error('There is no dist/moldsheet.cjs: run npm run build first.');
    copyFileSync(built, bundle);
  });
  afterAll(() => {
    rmSync(folder, { recursive: true });
  });

  it('runs away from the project and tells its version', () => {
    const { version } = JSON.parse(readFileSync(resolve(__dirname, '../../package.json'), 'utf8')) as {
      version: string;
    };
    expect(run('--version')).toEqual({ status: 0, out: `${version}\n`, err: '' });
  });

  it('works out a formula', () => {
    const { status, out, err } = run('calc', '--json', '=ROUND(MOLD.SEAT.FORCE(1000,30,0),6)');
    expect([status, err]).toEqual([0, '']);
    expect(JSON.parse(out)).toEqual({ formula: '=ROUND(MOLD.SEAT.FORCE(1000,30,0),6)', value: 2000 });
  });

  it('reads formulas from standard input', () => {
    const argv = [bundle, 'calc', '--file', '-'];
    const { stdout } = spawnSync(process.execPath, argv, { input: '=1+1\n=2+2\n', encoding: 'utf8' });
    expect(stdout).toBe('{"formula":"=1+1","value":2}\n{"formula":"=2+2","value":4}\n');
  });

  it('keeps reasons apart from values, and gives its status to the shell', () => {
    const { status, out, err } = run('calc', '=MOLD.SEAT.FORCE(1,0,0.1)');
    expect([status, out]).toEqual([1, '#VALUE!\n']);
    expect(err).toMatch(/^draft [^\n]+\n$/);
    expect(run('recalc', 'none.xlsx')).toMatchObject({ status: 2, out: '' });
  });

  it('can be run by its name alone', () => {
    expect(readFileSync(built, 'utf8').split('\n')[0]).toBe('#!/usr/bin/env node');
  });
});
