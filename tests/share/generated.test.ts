import { beforeAll, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { parseCell } from '../../src/cells/address';
import { cellFinder, type Workbook } from '../../src/package/model';
import { newWorkbook, readWorkbook } from '../../src/package';
import { agrees } from '../../src/workbook/agrees';
import { shareWorkbook, type ShareResult } from '../../src/share';
import { callsOfChecks, randomCalls, workbookOf } from './generated';
import { CI_SEED } from '../support/chance';
import { hasOffice, hasOpenpyxl, openedByOpenpyxl, recalculatedByOffice } from './office';

/** As many as `.ci/run` asks for by `FOLLOW`; else some, which are others in every run. */
const EACH = process.env['FOLLOW'] ? 20 : 4;
/** Drawn anew in every run at home, and printed by a failure; the same in CI, whose word must not hang on chance. */
const SEED = process.env['CI'] ? CI_SEED : Math.floor(Math.random() * 2 ** 31);

describe.skipIf(!hasOffice)(
  'every function in LibreOffice, which is needed for this (apt-get install libreoffice-calc)',
  () => {
    const calls = [...callsOfChecks(), ...randomCalls(EACH, SEED)];
    let shared: ShareResult;
    let office: Workbook;
    beforeAll(async () => {
      shared = await shareWorkbook(newWorkbook(workbookOf(calls)), worksheetFunctions, {
        as: 'native',
        oneCell: true,
      });
      office = recalculatedByOffice(shared.bytes);
    }, 900_000);

    it(`gives at its checks and at ${EACH} random inputs what the core gives (seed ${SEED})`, () => {
      const [own] = readWorkbook(shared.bytes, []).sheets;
      const theirs = office.sheets.find(({ name }) => name === 'Calls');
      if (!own || !theirs) throw new Error('the sheet of calls is gone');
      const [a, b] = [cellFinder(own), cellFinder(theirs)];
      const wrong = shared.cells.flatMap(({ cell, formula }) => {
        const { row, column } = parseCell(cell) ?? { row: 0, column: 0 };
        return [0, 1].flatMap((right) => {
          const [mine, its] = [a(row, column + right)?.value ?? null, b(row, column + right)?.value ?? null];
          return agrees(mine, its) ? [] : [`${formula}: ${String(its)} for ${String(mine)}`];
        });
      });
      expect(wrong).toEqual([]);
    });

    it('freezes no function that the golden table has alive, but for a few inputs near the end of a series', () => {
      const frozen = shared.cells.filter(
        ({ how, formula }) => how === 'frozen' && !formula.includes('STACK.TRIALS'),
      );
      expect(frozen.length / shared.cells.length).toBeLessThan(0.02);
    });

    it.skipIf(!hasOpenpyxl)('opens in openpyxl', () => {
      expect(openedByOpenpyxl(shared.bytes)).toEqual([String(readWorkbook(shared.bytes, []).sheets.length)]);
    });
  },
);
