import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const SRC = resolve(import.meta.dirname, '../src');

/** What each part may import, besides itself. */
const BELOW_CALL = ['cells', 'core', 'tables', 'catalogue', 'derive'];
const BELOW_WORKBOOK = [...BELOW_CALL, 'call', 'sheet', 'package'];
const BELOW_HOSTS = [...BELOW_WORKBOOK, 'workbook', 'render', 'work', 'whatif', 'forms', 'share'];
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  cells: [],
  core: [],
  tables: ['core'],
  catalogue: ['core', 'tables'],
  derive: ['cells', 'core', 'tables', 'catalogue'],
  call: BELOW_CALL,
  sheet: [...BELOW_CALL, 'call'],
  package: ['cells'],
  workbook: BELOW_WORKBOOK,
  render: [...BELOW_WORKBOOK, 'workbook'],
  work: [...BELOW_WORKBOOK, 'workbook', 'render'],
  whatif: [...BELOW_WORKBOOK, 'workbook', 'render'],
  forms: [...BELOW_WORKBOOK, 'workbook', 'render'],
  share: [...BELOW_WORKBOOK, 'workbook', 'render'],
  panel: BELOW_HOSTS,
  page: [...BELOW_HOSTS, 'panel'],
  excel: [...BELOW_HOSTS, 'panel'],
  onefile: [...BELOW_HOSTS, 'panel'],
  cli: BELOW_HOSTS,
};

interface SourceFile {
  readonly name: string;
  readonly part: string;
  readonly text: string;
  readonly imports: readonly string[];
}

const files: SourceFile[] = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/.test(name))
  .map((name) => {
    const text = readFileSync(join(SRC, name), 'utf8');
    const imports = [...text.matchAll(/(?:from|import|import\()\s*'([^']+)'/g)].map(
      (match) => match[1] ?? '',
    );
    return { name, part: name.split('/')[0] ?? '', text, imports };
  });

const partOf = ({ name }: SourceFile, specifier: string): string =>
  relative(SRC, resolve(SRC, dirname(name), specifier)).split('/')[0] ?? '';

/** Code without comments, so that a comment may speak of what the code must not touch. */
const code = ({ text }: SourceFile): string => text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');

describe('the imports', () => {
  it('of every part are declared', () => {
    expect(new Set(files.map(({ part }) => part)).size).toBeGreaterThan(4);
    for (const { part } of files) expect(Object.keys(MAY_IMPORT)).toContain(part);
  });

  it('go one way', () => {
    const wrong = files.flatMap((file) =>
      file.imports
        .filter((specifier) => specifier.startsWith('.'))
        .map((specifier) => partOf(file, specifier))
        // package.json is read for the version.
        .filter((part) => part !== file.part && part !== '..' && !MAY_IMPORT[file.part]?.includes(part))
        .map((part) => `${file.name} imports ${part}`),
    );
    expect(wrong).toEqual([]);
  });

  it('of files make no circles', () => {
    const byName = new Map(files.map((file) => [file.name, file]));
    const next = ({ name, imports }: SourceFile): readonly SourceFile[] =>
      imports
        .filter((specifier) => specifier.startsWith('.'))
        .map((specifier) => relative(SRC, resolve(SRC, dirname(name), specifier)).replaceAll('\\', '/'))
        .flatMap((path) => {
          const found = ['.ts', '.tsx', '/index.ts'].map((end) => byName.get(path + end)).find(Boolean);
          return found ? [found] : [];
        });
    const done = new Set<SourceFile>();
    const circles: string[] = [];
    const walk = (file: SourceFile, way: readonly SourceFile[]): void => {
      if (way.includes(file)) {
        circles.push([...way.slice(way.indexOf(file)), file].map(({ name }) => name).join(' → '));
        return;
      }
      if (done.has(file)) return;
      for (const one of next(file)) walk(one, [...way, file]);
      done.add(file);
    };
    for (const file of files) walk(file, []);
    expect(circles).toEqual([]);
  });

  it('of Node stay in the command line', () => {
    const wrong = files.filter(
      ({ part, imports }) => part !== 'cli' && imports.some((i) => i.startsWith('node:')),
    );
    expect(wrong.map(({ name }) => name)).toEqual([]);
  });

  it('leave Office to excel/ and the document to panel/, page/ and onefile/', () => {
    const office = files.filter(
      (file) => file.part !== 'excel' && /\b(?:Office|CustomFunctions|Excel)\./.test(code(file)),
    );
    expect(office.map(({ name }) => name)).toEqual([]);
    const dom = files.filter(
      (file) =>
        !['page', 'panel', 'excel', 'onefile'].includes(file.part) &&
        /\b(?:document|window)\./.test(code(file)),
    );
    expect(dom.map(({ name }) => name)).toEqual([]);
  });

  it('take mathjs only where equations are read and run', () => {
    const users = files.filter(({ imports }) => imports.some((i) => i.startsWith('mathjs')));
    expect(users.map(({ name }) => name).sort()).toEqual(['core/erf.ts', 'core/expr/parse.ts']);
  });
});
