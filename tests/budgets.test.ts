import { existsSync, readFileSync } from 'node:fs';
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

describe('sizes', () => {
  for (const { file, kB, because } of BUDGETS) {
    it.skipIf(!existsSync(file))(`${file} stays within ${kB} kB: ${because}`, () => {
      expect(gzipSync(readFileSync(file), { level: 9 }).length / 1000).toBeLessThanOrEqual(kB);
    });
  }
});
