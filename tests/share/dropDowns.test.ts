import { describe, expect, it } from 'vitest';
import { CellError, type CellValue } from '../../src/cells/value';
import { columnLetters } from '../../src/cells/address';
import { worksheetFunctions } from '../../src/call/functions';
import { inputsOf } from '../../src/core/define';
import { namesOffered } from '../../src/forms/namedWords';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import type { CellChange } from '../../src/package/changes';
import { shareWorkbook } from '../../src/share';
import { agrees } from '../../src/workbook/agrees';
import { recalculate } from '../../src/workbook/recalculate';
import { answerOf, isRefused, placed, workbookOfPlaced, type Followed } from './follow';
import { callsOfChecks } from './generated';

/** Asked for by `FOLLOW=1`, or by `FOLLOW=sample` for the first name of each list, the last and some between. */
const asked = process.env['FOLLOW'];
const TRIED = asked === '1' ? 40 : 4;

const spread = <T>(all: readonly T[], most: number): T[] =>
  all.length <= most
    ? [...all]
    : Array.from({ length: most }, (_, i) => all[Math.round((i * (all.length - 1)) / (most - 1))] as T);

/** Of every function one call, with the names that the drop-downs of its form offer put in one after another. */
const calls: Followed[] = [...new Set(callsOfChecks().map(({ definition }) => definition))].flatMap(
  (definition): Followed[] => {
    const first = callsOfChecks().find((call) => call.definition === definition);
    if (!first) return [];
    const changes = inputsOf(definition).flatMap((input, at) =>
      first.cells[at] === undefined || typeof first.cells[at][0] !== 'string'
        ? []
        : spread(namesOffered(input.reading), TRIED).map((word) => ({
            says: `${input.name} ${word}`,
            cells: first.cells.map((own, i) => (i === at ? [word] : own)),
          })),
    );
    return changes.length === 0 ? [] : [{ ...first, literal: new Set(), changes }];
  },
);

describe.skipIf(asked !== '1' && asked !== 'sample')('the drop-downs of a copy', () => {
  it('offer names of which it gives what the function gives', async () => {
    const rounds = Math.max(...calls.map(({ changes }) => changes.length));
    const rows = placed(calls, rounds);
    const shared = await shareWorkbook(newWorkbook(workbookOfPlaced(rows)), worksheetFunctions, {
      as: 'native',
    });
    const copy = readWorkbook(shared.bytes, []);
    const wrong: string[] = [];
    let right = 0;
    for (let round = 0; round < rounds; round++) {
      const put = rows.flatMap(({ changes, row }) =>
        (changes[round]?.cells ?? []).flatMap((own, at) =>
          (own ?? []).map((value, down): CellChange => ({
            sheet: 'Calls',
            row: row + down - 1,
            column: 8 + at,
            value,
          })),
        ),
      );
      const found = await recalculate(readWorkbook(saveWorkbook(copy, put), []), [], { anew: true });
      const values = new Map(
        found.flatMap(({ sheet, row, column, value }) =>
          sheet === 'Calls' ? [[`${columnLetters(column)}${row + 1}`, value] as const] : [],
        ),
      );
      for (const { call, changes, row } of rows) {
        const change = changes[round];
        if (!change) continue;
        const wanted = answerOf({ ...call, cells: change.cells });
        const got = wanted.map((_, i): CellValue => values.get(`${columnLetters(1 + i)}${row}`) ?? null);
        const isRight = isRefused(wanted)
          ? got.every((one) => one instanceof CellError)
          : wanted.every((one, i) => agrees(one, got[i] ?? null));
        if (isRight) right += 1;
        else wrong.push(`${call.definition.name}, ${change.says}: ${got.join(' ')} for ${wanted.join(' ')}`);
      }
    }
    expect(right).toBeGreaterThan(200);
    expect(wrong).toEqual([]);
  }, 600_000);
});
