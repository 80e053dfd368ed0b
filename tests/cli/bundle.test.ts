import { spawnSync } from 'node:child_process';
import { copyFileSync, cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const built = resolve(__dirname, '../../dist/moldsheet.cjs');

/** What the file of a function and of the calculation weigh together when one formula is worked out. */
const MOST_KB = 420;

/** Tells at its end how much of the program was read. */
const COUNTER = `process.on('exit', () => {
  const { statSync } = require('node:fs');
  const read = Object.keys(require.cache).filter((file) => file.startsWith(__dirname) && file !== __filename);
  process.stderr.write(String(read.reduce((sum, file) => sum + statSync(file).size, 0)));
});`;

/** What a person runs: one file with its parts beside it, and nothing else. */
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
    cpSync(join(dirname(built), 'cli'), join(folder, 'cli'), { recursive: true });
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

  it('reads no more for one formula than this needs', () => {
    const counter = join(folder, 'counter.cjs');
    writeFileSync(counter, COUNTER);
    const argv = ['--require', counter, bundle, 'calc', '=MOLD.SEAT.FREEDRAFT(0.1)'];
    const { status, stderr } = spawnSync(process.execPath, argv, { encoding: 'utf8' });
    expect(status).toBe(0);
    expect(Number(stderr) / 1000).toBeGreaterThan(50);
    expect(Number(stderr) / 1000).toBeLessThan(MOST_KB);
  });

  it('can be run by its name alone', () => {
    expect(readFileSync(built, 'utf8').split('\n')[0]).toBe('#!/usr/bin/env node');
  });
});
