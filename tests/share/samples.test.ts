import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { cellAddress } from '../../src/cells/address';
import { cellFinder } from '../../src/package/model';
import { readWorkbook } from '../../src/package';
import { agrees } from '../../src/workbook/agrees';
import { restoreWorkbook, shareWorkbook } from '../../src/share';
import { hasOffice, hasOpenpyxl, openedByOpenpyxl, recalculatedByOffice } from './office';

const FOLDER = join(import.meta.dirname, '../../samples');
const samples = readdirSync(FOLDER).filter((name) => name.endsWith('.xlsx'));
const ids = worksheetFunctions.map(({ id }) => id);
const open = (name: string) => readWorkbook(readFileSync(join(FOLDER, name)), ids);

/** What explains or tries functions, and seeded trials, have no formula of their own. */
const MAY_FREEZE = /MOLD\.(?:TRY|SHOW)\.|MOLD\.STACK\.TRIALS/;

describe.each(samples)('the sample %s', (name) => {
  it('is native or looked up, but for what explains and tries', async () => {
    const { cells } = await shareWorkbook(open(name), worksheetFunctions, { as: 'native' });
    const frozen = cells.filter(({ how, formula }) => how === 'frozen' && !MAY_FREEZE.test(formula));
    expect(frozen).toEqual([]);
  }, 180_000);

  it('comes back with all its formulas', async () => {
    const workbook = open(name);
    const { bytes } = await shareWorkbook(workbook, worksheetFunctions, { as: 'native' });
    const back = await restoreWorkbook(readWorkbook(bytes, ids), worksheetFunctions);
    expect(back?.changed).toEqual([]);
    const formulas = (book: typeof workbook) =>
      book.sheets.map((sheet) =>
        sheet.cells.flatMap(({ row, column, formula }) =>
          formula === undefined ? [] : [`${cellAddress(row, column)} ${formula}`],
        ),
      );
    expect(formulas(readWorkbook(back?.bytes ?? new Uint8Array(), ids))).toEqual(formulas(workbook));
  }, 180_000);

  it.skipIf(!hasOffice)(
    'gives in LibreOffice what it gave here (needs libreoffice-calc)',
    async () => {
      const { bytes } = await shareWorkbook(open(name), worksheetFunctions, { as: 'native', basis: true });
      const office = recalculatedByOffice(bytes);
      const wrong = readWorkbook(bytes, ids).sheets.flatMap((sheet) => {
        const its = cellFinder(office.sheets.find((one) => one.name === sheet.name) ?? sheet);
        return sheet.cells.flatMap(({ row, column, value, formula }) => {
          // Programs print the same formula each in their own way.
          if (value === null || formula?.includes('FORMULATEXT') === true) return [];
          const found = its(row, column)?.value ?? null;
          return agrees(value, found)
            ? []
            : [`${sheet.name}!${cellAddress(row, column)}: ${String(found)} for ${String(value)}`];
        });
      });
      expect(wrong).toEqual([]);
    },
    120_000,
  );

  it.skipIf(!hasOpenpyxl)(
    'opens in openpyxl in every form (needs python3-openpyxl)',
    async () => {
      for (const as of ['native', 'values', 'both'] as const) {
        const { bytes } = await shareWorkbook(open(name), worksheetFunctions, { as, basis: true });
        expect(openedByOpenpyxl(bytes)).toBe(String(readWorkbook(bytes, ids).sheets.length));
      }
    },
    120_000,
  );
});
