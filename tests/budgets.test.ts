import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';

/**
 * Sizes that a person waits for, in kB (1000 bytes) after gzip. A rise is made in the commit that causes it, with the
 * reason here.
 */
const BUDGETS: readonly { readonly file: string; readonly kB: number; readonly because: string }[] = [
  {
    file: 'dist/excel/functions.js',
    kB: 80,
    because:
      'Excel shows #VALUE! for functions that come late. It holds every function of numbers with its tables and compiled equations, and none of its texts',
  },
  {
    file: 'dist/excel/taskpane.js',
    kB: 180,
    because:
      'React, the controls of Office add-ins, the search with its words and the writer of design sheets; loads beside the functions at every start of the add-in',
  },
  {
    file: 'dist/page/one-page.html',
    kB: 440,
    because:
      'Goes by mail with every one-file page, packed already: the catalogue with its equations, compiled and as texts, our calculation, the reader of workbooks, the typesetter of equations',
  },
];

/** What the page asks for before its sheet stands: all that its own HTML names. */
const PAGE = {
  html: 'dist/page/index.html',
  kB: 2_300,
  because:
    'A newcomer waits for it: 1.7 MB of it are the grid, the rest React with the controls, our calculation with the catalogue, the first sample',
};

const gzipped = (file: string): number => gzipSync(readFileSync(file), { level: 9 }).length / 1000;

describe('sizes', () => {
  it.skipIf(!existsSync(PAGE.html))(
    `what the page opens with stays within ${PAGE.kB} kB: ${PAGE.because}`,
    () => {
      const named = [...readFileSync(PAGE.html, 'utf8').matchAll(/(?:src|href)="([^":]+\.\w+)"/g)];
      const files = new Set(named.map(([, file = '']) => join(dirname(PAGE.html), file)));
      expect([...files].filter((file) => /(grid|controls|page|start)\.\w+\.js$/.test(file))).toHaveLength(4);
      expect([...files].reduce((sum, file) => sum + gzipped(file), 0)).toBeLessThanOrEqual(PAGE.kB);
    },
  );

  for (const { file, kB, because } of BUDGETS) {
    it.skipIf(!existsSync(file))(`${file} stays within ${kB} kB: ${because}`, () => {
      expect(gzipped(file)).toBeLessThanOrEqual(kB);
    });
  }
});
