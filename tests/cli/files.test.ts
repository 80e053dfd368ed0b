import {
  chmodSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { writeBytes } from '../../src/cli/files';

const root = mkdtempSync(join(tmpdir(), 'files-'));
let folder = root;
let count = 0;
const bytes = new TextEncoder().encode('new');
const text = (path: string): string => readFileSync(path, 'utf8');

beforeEach(() => {
  folder = join(root, String(count++));
  mkdirSync(folder);
});
afterAll(() => {
  rmSync(root, { recursive: true });
});

describe.skipIf(process.platform === 'win32')('a file written', () => {
  it('keeps the mode of the one before', async () => {
    const file = join(folder, 'a.xlsx');
    writeFileSync(file, 'old');
    chmodSync(file, 0o666);
    await writeBytes(file, bytes);
    expect(statSync(file).mode & 0o777).toBe(0o666);
    expect(text(file)).toBe('new');
  });

  it('through links reaches the file that they lead to, and leaves them links', async () => {
    mkdirSync(join(folder, 'real'));
    writeFileSync(join(folder, 'real', 'a.xlsx'), 'old');
    symlinkSync(join('real', 'a.xlsx'), join(folder, 'b.xlsx'));
    symlinkSync(join(folder, 'b.xlsx'), join(folder, 'c.xlsx'));
    await writeBytes(join(folder, 'c.xlsx'), bytes);
    expect(text(join(folder, 'real', 'a.xlsx'))).toBe('new');
    expect(lstatSync(join(folder, 'c.xlsx')).isSymbolicLink()).toBe(true);
    expect(readdirSync(join(folder, 'real'))).toEqual(['a.xlsx']);
  });

  it('through a link to nothing makes the file there', async () => {
    symlinkSync('later.xlsx', join(folder, 'b.xlsx'));
    await writeBytes(join(folder, 'b.xlsx'), bytes);
    expect(text(join(folder, 'later.xlsx'))).toBe('new');
  });

  it('never takes the place of a device or a folder, and leaves nothing behind', async () => {
    symlinkSync('/dev/null', join(folder, 'null.xlsx'));
    mkdirSync(join(folder, 'd.xlsx'));
    await expect(writeBytes(join(folder, 'null.xlsx'), bytes)).rejects.toThrow('no ordinary file');
    await expect(writeBytes(join(folder, 'd.xlsx'), bytes)).rejects.toThrow('it is a folder');
    expect(readdirSync(folder).sort()).toEqual(['d.xlsx', 'null.xlsx']);
  });

  it('is refused where links lead round in a circle', async () => {
    symlinkSync('b.xlsx', join(folder, 'a.xlsx'));
    symlinkSync('a.xlsx', join(folder, 'b.xlsx'));
    await expect(writeBytes(join(folder, 'a.xlsx'), bytes)).rejects.toThrow('circle');
  });

  it('into a folder that is not there says so', async () => {
    await expect(writeBytes(join(folder, 'x', 'a.xlsx'), bytes)).rejects.toThrow(
      'there is no such file or folder',
    );
  });
});
