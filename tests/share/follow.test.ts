import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { CellError, type CellValue } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import { newWorkbook, readWorkbook } from '../../src/package';
import { cellFinder } from '../../src/package/model';
import { saveWorkbook } from '../../src/package/save';
import { shareWorkbook } from '../../src/share';
import { OTHER_INPUTS } from '../../src/share/frozen';
import { agrees } from '../../src/workbook/agrees';
import { LibreOffice } from '../../scripts/libreoffice';
import { CI_SEED } from '../support/chance';
import {
  answerOf,
  changesOfRound,
  followedCalls,
  isRefused,
  placed,
  sampled,
  workbookOfPlaced,
} from './follow';
import { hasOffice } from './office';

/**
 * It takes minutes where other work goes on: asked for by `FOLLOW=1`, or by `FOLLOW=sample`, which has every function and
 * every kind of change but fewer of each.
 */
const asked = process.env['FOLLOW'];
const isWhole = asked === '1';
/** Random changes of every function. */
const EACH = isWhole ? 50 : 3;
const ROUNDS = isWhole ? 24 : 8;
/** The sample is the same everywhere: a push is not to fail by chance on what it did not touch. */
const SEED = process.env['CI'] || !isWhole ? CI_SEED : Math.floor(Math.random() * 2 ** 31);

/** A cell that says in words that it has no value here. */
const saysSo = (cell: CellValue): boolean => cell instanceof CellError || cell === OTHER_INPUTS;

describe.skipIf(!hasOffice || (!isWhole && asked !== 'sample'))(
  'a copy whose cells are changed in LibreOffice, which is needed for this (apt-get install libreoffice-calc)',
  () => {
    const lies: string[] = [];
    const dead: string[] = [];
    let right = 0;
    beforeAll(async () => {
      const calls = followedCalls(EACH, SEED);
      const rows = placed(isWhole ? calls : sampled(calls, ROUNDS, SEED), ROUNDS);
      const workbook = newWorkbook(workbookOfPlaced(rows));
      const shared = await shareWorkbook(workbook, worksheetFunctions, { as: 'native' });
      const copy = readWorkbook(shared.bytes, []);
      const folder = mkdtempSync(join(tmpdir(), 'moldsheet-follow-'));
      const office = new LibreOffice();
      try {
        const files = Array.from({ length: ROUNDS }, (_, round) => {
          const file = join(folder, `${round}.xlsx`);
          writeFileSync(file, saveWorkbook(copy, changesOfRound(rows, round)));
          return file;
        });
        expect(await office.recalculate(files, join(folder, 'out'), 1500)).toEqual([]);
        files.forEach((_, round) => {
          const { sheets } = readWorkbook(readFileSync(join(folder, 'out', `${round}.xlsx`)), []);
          const calls = sheets.find(({ name }) => name === 'Calls');
          if (!calls) throw new Error('the sheet of calls is gone');
          const found = cellFinder(calls);
          for (const { call, changes, row } of rows) {
            const change = changes[round];
            if (!change) continue;
            const wanted = answerOf({ ...call, cells: change.cells });
            const got = wanted.map((__, i) => found(row - 1, 1 + i)?.value ?? null);
            const told = `${call.definition.name}, ${change.says}: ${got.join(' ')} for ${wanted.join(' ')}`;
            if (isRefused(wanted)) {
              if (!got.every(saysSo)) lies.push(told);
            } else if (wanted.every((one, i) => agrees(one, got[i] ?? null))) right += 1;
            else if (got.some(saysSo)) dead.push(told);
            else lies.push(told);
          }
        });
      } finally {
        office.dispose();
        rmSync(folder, { recursive: true, force: true });
      }
    }, 2_400_000);

    it(`shows no number where the core gives another one or none (seed ${SEED})`, () => {
      expect(lies).toEqual([]);
      expect(right).toBeGreaterThan(isWhole ? 10_000 : 800);
    });

    it('stays live and right for nearly all changes that the core answers', () => {
      const share = right / (right + dead.length);
      expect(
        share,
        `${right} right; of the others for example\n${dead.slice(0, 40).join('\n')}`,
      ).toBeGreaterThanOrEqual(isWhole ? 0.97 : 0.93);
    });
  },
);
