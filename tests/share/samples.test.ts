import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { cellAddress } from '../../src/cells/address';
import { readWorkbook } from '../../src/package';
import { cellFinder, type Workbook } from '../../src/package/model';
import { knownFunctions } from '../../src/package/spelling';
import { changeStructure } from '../../src/package/structure';
import { restoreWorkbook, shareWorkbook, type ShareResult } from '../../src/share';
import { agrees } from '../../src/workbook/agrees';
import { recalculate } from '../../src/workbook/recalculate';
import { LibreOffice } from '../../scripts/libreoffice';
import { hasOffice, hasOpenpyxl, openedByOpenpyxl } from './office';

const FOLDER = join(import.meta.dirname, '../../samples');
const samples = readdirSync(FOLDER).filter((name) => name.endsWith('.xlsx'));
const ids = worksheetFunctions.map(({ id }) => id);
const open = (name: string) => readWorkbook(readFileSync(join(FOLDER, name)), ids);

/** What explains or tries functions, and seeded trials, have no formula of their own. */
const MAY_FREEZE = /MOLD\.(?:TRY|SHOW)\.|MOLD\.STACK\.TRIALS/;

const copies = new Map<string, Promise<ShareResult>>();
const copyOf = (name: string): Promise<ShareResult> => {
  const copy =
    copies.get(name) ?? shareWorkbook(open(name), worksheetFunctions, { as: 'native', basis: true });
  copies.set(name, copy);
  return copy;
};

const formulas = (book: Workbook): string[] =>
  book.sheets.flatMap((sheet) =>
    sheet.cells.flatMap(({ row, column, formula }) =>
      formula === undefined ? [] : [`${sheet.name}!${cellAddress(row, column)} ${formula}`],
    ),
  );

async function broughtBack(bytes: Uint8Array) {
  const back = await restoreWorkbook(readWorkbook(bytes, ids), worksheetFunctions);
  const { changed, problems } = back ?? {};
  return { changed, problems, formulas: formulas(readWorkbook(back?.bytes ?? new Uint8Array(), ids)) };
}

describe.each(samples)('the sample %s', (name) => {
  it('is native or looked up, but for what explains and tries', async () => {
    const { cells } = await copyOf(name);
    const frozen = cells.filter(({ how, formula }) => how === 'frozen' && !MAY_FREEZE.test(formula));
    expect(frozen).toEqual([]);
  }, 180_000);

  it('has formulas of at most 60 letters in the median, of functions that spreadsheets of 2010 know', async () => {
    const own = readWorkbook((await copyOf(name)).bytes, []).sheets.filter(
      ({ state }) => state === 'visible',
    );
    const texts = own.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
    const lengths = texts.map(({ length }) => length).sort((a, b) => a - b);
    expect(lengths[Math.floor(lengths.length / 2)]).toBeLessThanOrEqual(60);
    // What the author of the sheet typed stays, and that may be newer.
    const newer = /\b(?:LET|LAMBDA|IFS|SWITCH|XLOOKUP|FILTER|TEXTJOIN|CONCAT|MAXIFS|MINIFS)\(/;
    const working = own.find((sheet) => sheet.name.startsWith('How it is calculated'));
    expect(working?.cells.filter(({ formula = '' }) => newer.test(formula))).toEqual([]);
  }, 180_000);

  it('comes back with all its formulas', async () => {
    expect(await broughtBack((await copyOf(name)).bytes)).toEqual({
      changed: [],
      problems: [],
      formulas: formulas(open(name)),
    });
  }, 180_000);

  it.skipIf(!hasOpenpyxl)(
    'opens in openpyxl in every form (needs python3-openpyxl)',
    async () => {
      const copies = [await copyOf(name)];
      for (const as of ['values', 'both'] as const)
        copies.push(await shareWorkbook(open(name), worksheetFunctions, { as, basis: true }));
      expect(openedByOpenpyxl(...copies.map(({ bytes }) => bytes))).toEqual(
        copies.map(({ bytes }) => String(readWorkbook(bytes, ids).sheets.length)),
      );
    },
    120_000,
  );
});

/** Points of rows on a page of A4 across, as measured where LibreOffice fits the width of this sheet to it. */
const A_PAGE = 860;

it('prints the basis of the first sample on three pages', async () => {
  const { sheets } = readWorkbook((await copyOf('push-out-insert.xlsx')).bytes, []);
  const heights = sheets.find((sheet) => sheet.name === 'Basis')?.rows.map(({ height = 15 }) => height) ?? [];
  expect(heights.reduce((sum, height) => sum + height, 0)).toBeLessThanOrEqual(3 * A_PAGE);
}, 180_000);

describe.skipIf(!hasOffice)(
  'in LibreOffice, which is needed for this (apt-get install libreoffice-calc),',
  () => {
    const folder = mkdtempSync(join(tmpdir(), 'moldsheet-samples-'));
    const office = new LibreOffice();
    const saved = (kind: string, name: string): Uint8Array => readFileSync(join(folder, kind, name));

    /** What the macro below does to each copy. */
    const asByHand = (workbook: Workbook): Workbook => {
      const known = knownFunctions(ids);
      const [sheet] = workbook.sheets.map(({ name }) => name);
      const row = changeStructure(
        workbook,
        { do: 'insert', what: 'rows', sheet: sheet ?? '', at: 2, count: 1 },
        known,
      );
      const column = changeStructure(
        row,
        { do: 'insert', what: 'columns', sheet: sheet ?? '', at: 1, count: 1 },
        known,
      );
      return changeStructure(column, { do: 'renameSheet', sheet: sheet ?? '', name: 'Moved by hand' }, known);
    };

    beforeAll(async () => {
      for (const name of samples) writeFileSync(join(folder, name), (await copyOf(name)).bytes);
      const files = samples.map((name) => join(folder, name));
      expect(await office.recalculate(files, join(folder, 'saved'), 600)).toEqual([]);
      await office.basic(
        [
          'Dim quiet(0) As New com.sun.star.beans.PropertyValue',
          'quiet(0).Name = "Hidden" : quiet(0).Value = True',
          'Dim form(0) As New com.sun.star.beans.PropertyValue',
          'form(0).Name = "FilterName" : form(0).Value = "Calc MS Excel 2007 XML"',
          ...samples.flatMap((name) => [
            `doc = StarDesktop.loadComponentFromURL(ConvertToURL("${join(folder, name)}"), "_blank", 0, quiet())`,
            'sheet = doc.Sheets.getByIndex(0)',
            'sheet.Rows.insertByIndex(2, 1)',
            'sheet.Columns.insertByIndex(1, 1)',
            'sheet.Name = "Moved by hand"',
            `doc.storeToURL(ConvertToURL("${join(folder, 'moved', name)}"), form())`,
            'doc.close(True)',
          ]),
        ],
        600,
      );
    }, 900_000);

    afterAll(() => {
      office.dispose();
      rmSync(folder, { recursive: true, force: true });
    });

    it.each(samples)('the copy of %s gives what it gave here', async (name) => {
      const its = new Map(readWorkbook(saved('saved', name), []).sheets.map((sheet) => [sheet.name, sheet]));
      const wrong = readWorkbook((await copyOf(name)).bytes, ids).sheets.flatMap((sheet) => {
        const find = cellFinder(its.get(sheet.name) ?? sheet);
        return sheet.cells.flatMap(({ row, column, value, formula }) => {
          // Programs print the same formula each in their own way, and some take an empty text for a blank.
          if (value === null || value === '' || formula?.includes('FORMULATEXT') === true) return [];
          const found = find(row, column)?.value ?? null;
          return agrees(value, found)
            ? []
            : [`${sheet.name}!${cellAddress(row, column)}: ${String(found)} for ${String(value)}`];
        });
      });
      expect(wrong).toEqual([]);
    });

    it.each(samples)('the copy of %s gives the same from the places where it all went', async (name) => {
      const wanted = await recalculate(asByHand(open(name)), worksheetFunctions);
      const its = new Map(readWorkbook(saved('moved', name), []).sheets.map((sheet) => [sheet.name, sheet]));
      const wrong = wanted.flatMap(({ sheet, row, column, formula, value }) => {
        const found = cellFinder(its.get(sheet) ?? { cells: [] })(row, column)?.value ?? null;
        const isPlain = value !== null && value !== '' && !/FORMULATEXT|SHOW\./.test(formula);
        return !isPlain || agrees(value, found)
          ? []
          : [`${sheet}!${cellAddress(row, column)} ${formula}: ${String(found)} for ${String(value)}`];
      });
      expect(wrong).toEqual([]);
    });

    it.each(samples)(
      'the copy of %s comes back after a row and a column were inserted there, a sheet got another name and it was saved',
      async (name) => {
        expect(await broughtBack(saved('moved', name))).toEqual({
          changed: [],
          problems: [],
          formulas: formulas(asByHand(open(name))),
        });
      },
    );
  },
);
