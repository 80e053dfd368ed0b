import { mkdtempSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { readWorkbook, saveWorkbook } from '../../src/package';
import { newWorkbook } from '../../src/package/author';
import { run } from './run';

const folder = mkdtempSync(join(tmpdir(), 'moldsheet-variants-'));
const ids = worksheetFunctions.map(({ id }) => id);
const path = (name: string): string => join(folder, name);

it('moldsheet variants keeps sets of inputs, compares them, says which were made for other values, applies one', async () => {
  const design = newWorkbook({
    names: { draft: 'Seat!$B$1' },
    sheets: [
      {
        name: 'Seat',
        cells: {
          A1: 'Draft',
          B1: 3,
          C1: 'deg',
          A2: 'Friction',
          B2: 0.15,
          A3: 'Lets go at',
          B3: { formula: 'MOLD.SEAT.FREEDRAFT(B2)' },
          C3: 'deg',
          A4: 'Seat',
          B4: { formula: 'IF(B1>B3,"✓ holds","✗ does not hold")' },
        },
      },
    ],
  });
  await writeFile(path('a.xlsx'), saveWorkbook(design, []));
  const none = await run('variants', path('a.xlsx'));
  expect(none).toMatchObject({ status: 2 });
  expect(none.err).toContain('no variants yet');
  const begun = await run(
    'variants',
    path('a.xlsx'),
    '--inputs',
    'draft',
    '--results',
    'B3,B4',
    '--add',
    'A 3°',
    '-o',
    path('b.xlsx'),
  );
  expect(begun).toMatchObject({ status: 0, err: '' });
  expect(begun.out).toMatch(/A 3°[^]*Draft[^]*Lets go at[^]*✗ does not hold/);
  expect(begun.out).not.toContain('What the results were worked out for');

  const table = await run('whatif', path('b.xlsx'), '--set', 'DRAFT=3,20', '--read', 'B4');
  expect(table.out).toMatch(/✗ does not hold[^]*✓ holds/);
  const unknown = await run('whatif', path('b.xlsx'), '--set', 'angle=3,20', '--read', 'B4');
  expect(unknown.err).toContain('"angle" is no cell and no name of one; write it as Insert!C6.');

  const changed = readWorkbook(await readFile(path('b.xlsx')), ids);
  await writeFile(path('c.xlsx'), saveWorkbook(changed, [{ sheet: 'Seat', row: 1, column: 1, value: 0.03 }]));
  const again = await run('variants', path('c.xlsx'), '--apply', 'A 3°', '-o', path('d.xlsx'));
  expect(again.out).toMatch(/✓ holds +✓ holds/);
  expect(again.out).toContain(
    'The file had results made for other values (A 3°); these are worked out anew.',
  );
  expect((await run('variants', path('d.xlsx'))).out).not.toContain('made for other values');
});
