import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { CellError, type CellValue } from '../../src/cells/value';
import { inputsOf } from '../../src/core/define';
import { newWorkbook, readWorkbook } from '../../src/package';
import { shareWorkbook } from '../../src/share';
import type { Edit } from '../../src/sheet/book';
import { agrees } from '../../src/workbook/agrees';
import { CalculatedWorkbook } from '../../src/workbook/calculated';
import { HEIGHT, randomCalls, workbookOf, type AskedAbout, type GeneratedCall } from './generated';

type Cells = GeneratedCall['cells'];

/** The same call with the other units, with another metal, and with one number after another far out. */
function changesOf({ definition, cells }: GeneratedCall): Cells[] {
  const put = (at: number, value: CellValue): Cells => cells.map((own, i) => (i === at ? [value] : own));
  const units = inputsOf(definition).length;
  return [
    put(units, cells[units]?.[0] === 'mm' ? 'in' : 'mm'),
    ...inputsOf(definition).flatMap(({ reading, name }, at): Cells[] => {
      const [first] = cells[at] ?? [];
      if (/metal/i.test(name) && first !== undefined)
        return ['brass', 'P20', 70_000, null].map((metal) => put(at, metal));
      if (reading.as !== 'quantity' || typeof first !== 'number') return [];
      // Of five digits: the sixth that is told is no matter of how programs round.
      const factors = reading.kind === 'count' ? [40] : [0.03, 25.4];
      return factors.map((factor) => put(at, Number((first * factor).toPrecision(5))));
    }),
  ];
}

const calls = randomCalls(1, 26);

describe.each<AskedAbout>(['SHOW.CHECK', 'SHOW.MARGIN'])('%s in a native copy', (asked) => {
  const tool = worksheetFunctions.find(({ id }) => id === asked);

  it('says what Moldsheet says of inputs that are changed in the copy, or is in error', async () => {
    const shared = await shareWorkbook(newWorkbook(workbookOf(calls, asked)), worksheetFunctions, {
      as: 'native',
    });
    const live = new Set(
      shared.cells.flatMap(({ cell, how }) => (how === 'native' || how === 'looked up' ? [cell] : [])),
    );
    const copy = CalculatedWorkbook.of(readWorkbook(shared.bytes, []), []);
    const [sheet] = copy.workbook.sheets;
    if (!sheet || !tool) throw new Error('nothing to ask');
    const wrong: string[] = [];
    let [answers, told] = [0, 0];
    calls.forEach((call, at) => {
      if (!live.has(`B${1 + HEIGHT * at}`)) return;
      const row = HEIGHT * at;
      const change = (to: Cells): void => {
        copy.change(
          to.flatMap((column, i) =>
            (column ?? []).map((value, down): Edit => ({ sheet: 0, row: row + down, column: 6 + i, value })),
          ),
        );
      };
      for (const cells of [call.cells, ...changesOf(call)]) {
        change(cells);
        const found = copy.at(sheet, row, 1);
        const [[wanted = null] = []] = tool.call([
          [[call.definition.name]],
          ...cells.map((column) => column?.map((value) => [value])),
        ]);
        if (!(wanted instanceof CellError)) answers++;
        if (!(found instanceof CellError)) told++;
        if (!(found instanceof CellError) && !agrees(found, wanted))
          wrong.push(
            `${call.definition.name}(${JSON.stringify(cells)}): ${String(found)} for ${String(wanted)}`,
          );
      }
      change(call.cells);
    });
    expect(wrong).toEqual([]);
    expect(told / answers).toBeGreaterThan(0.97);
    expect(live.size).toBeGreaterThanOrEqual(asked === 'SHOW.CHECK' ? 150 : 10);
  }, 120_000);
});
