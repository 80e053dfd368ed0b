import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { CellValue } from '../../src/cells/value';
import { cellFinder } from '../../src/package/model';
import { readWorkbook } from '../../src/package/read';
import { LibreOffice } from '../libreoffice';
import { type PlainCell, plainWorkbook } from './plainWorkbook';

/** The values that LibreOffice gives the formulas of one column. */
export async function calculatedElsewhere(
  cells: readonly PlainCell[],
  column: number,
): Promise<(row: number) => CellValue> {
  const folder = mkdtempSync(join(tmpdir(), 'moldsheet-fuzz-'));
  const office = new LibreOffice();
  try {
    const input = join(folder, 'fuzz.xlsx');
    writeFileSync(input, plainWorkbook(cells));
    const failed = await office.recalculate([input], join(folder, 'out'), 50);
    if (failed.length > 0) throw new Error('LibreOffice wrote nothing within 50 s.');
    const [sheet] = readWorkbook(readFileSync(join(folder, 'out', 'fuzz.xlsx')), []).sheets;
    const cell = sheet === undefined ? () => undefined : cellFinder(sheet);
    return (row) => cell(row, column)?.value ?? null;
  } finally {
    office.dispose();
    rmSync(folder, { recursive: true, force: true });
  }
}
