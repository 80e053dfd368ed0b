import { mkdtempSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { readWorkbook } from '../../src/package';
import { run } from './run';

const folder = mkdtempSync(join(tmpdir(), 'moldsheet-form-'));
const read = async (path: string) =>
  readWorkbook(
    await readFile(path),
    worksheetFunctions.map(({ id }) => id),
  );

describe('moldsheet form', () => {
  const first = join(folder, 'first.xlsx');
  const second = join(folder, 'second.xlsx');

  it('writes a new workbook, and a second form below that shares its inputs', async () => {
    const made = await run('form', 'seat.sink', '--units', 'mm', '-o', first);
    expect(made.err).toBe('');
    expect(made.out).toContain('The form stands at Design!A1:G');
    const more = await run('form', 'MOLD.SEAT.FORCE', first, '--join', 'all', '-o', second);
    expect(more.status).toBe(0);
    const { sheets, names } = await read(second);
    const formulas = sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
    expect(formulas).toContain('MOLD.SEAT.FORCE(push,draft,friction,units)');
    expect(names.map(({ name }) => name)).toContain('seat_force');
  });

  it('offers what can be shared, and refuses what cannot', async () => {
    const offered = await run('form', 'SEAT.FORCE', first, '-o', join(folder, 'third.xlsx'));
    expect(offered.out).toMatch(
      /has these inputs already: push \(Design!D4\), draft .* Share them with --join all\./,
    );
    const refused = await run('form', 'SEAT.FORCE', first, '--join', 'wall', '-o', second);
    expect(refused).toMatchObject({ status: 2 });
    expect(refused.err).toContain('no input wall of the same name and kind; it has push, draft, friction');
  });

  it('refuses filled cells with the place where it fits', async () => {
    const { status, err } = await run('form', 'SEAT.FORCE', first, '--at', 'Design!B3', '-o', second);
    expect(status).toBe(2);
    expect(err).toMatch(/where D3 is not empty\. It fits at B\d+\./);
  });

  it('names functions like the one that is not there, and cells that are none', async () => {
    expect((await run('form', 'SEAT.STAP', '-o', second)).err).toContain('MOLD.SEAT.STEP');
    expect((await run('form', 'SEAT.STEP', first, '--at', 'top', '-o', second)).err).toContain(
      '"top" is no cell',
    );
    expect((await run('form', 'SEAT.STEP', first, '--at', 'Nowhere!A1', '-o', second)).err).toContain(
      'no sheet "Nowhere"',
    );
  });
});
