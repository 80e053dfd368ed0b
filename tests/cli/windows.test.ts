import { win32 } from 'node:path';
import { describe, expect, it } from 'vitest';
import { besideOf } from '../../src/cli/files';
import { fileWithin } from '../../src/cli/staticServer';
import manifest from '../../package.json';

const FOLDER = 'C:\\Users\\shop floor\\dist\\page';

describe('paths on Windows', () => {
  it.each([
    ['/', 'index.html'],
    ['/help/', 'help\\index.html'],
    ['/help/SEAT.SINK.html', 'help\\SEAT.SINK.html'],
    ['/samples/push-out-insert.xlsx', 'samples\\push-out-insert.xlsx'],
    ['/a%20b.js', 'a b.js'],
  ])('the server finds %s', (asked, file) => {
    expect(fileWithin(FOLDER, asked, win32)).toBe(`${FOLDER}\\${file}`);
  });

  it('a folder may be given with either sign, and relative to where one stands', () => {
    expect(fileWithin('C:/Users/shop floor/dist/page', '/page.js', win32)).toBe(`${FOLDER}\\page.js`);
    expect(fileWithin('dist\\page\\', '/page.js', win32)?.endsWith('dist\\page\\page.js')).toBe(true);
  });

  it.each([
    '/../secret.txt',
    '/..%5Csecret.txt',
    '/..%5c..%5c..%5cWindows%5Cwin.ini',
    '/C:/Windows/win.ini',
    '/C:%5CWindows%5Cwin.ini',
    '/index.html::$DATA',
    '/..%2Fpage-other%2Fsecret.txt',
  ])('the server gives nothing outside its folder: %s', (asked) => {
    expect(fileWithin(FOLDER, asked, win32)).toBeUndefined();
  });

  it('a file is written in its own folder first', () => {
    expect(besideOf('D:\\designs\\part 7.xlsx', 'x', win32)).toBe('D:\\designs\\.part 7.xlsx.x');
  });
});

/** Signs, variables and commands that its own shell takes otherwise or has not; quotes of one stroke are letters there. */
const UNIX_ONLY =
  /['$`;|]|(?:^|&&\s*)(?:[A-Z_]+=|(?:rm|cp|mv|mkdir|cat|sed|sh|bash|chmod|test|export|\.\/)\b)/;

describe('the scripts of package.json', () => {
  it.each(Object.entries(manifest.scripts))('%s needs no shell of Unix', (_name, command) => {
    expect(command).not.toMatch(UNIX_ONLY);
  });
});
