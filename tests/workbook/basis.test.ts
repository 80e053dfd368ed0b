import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { BASIS } from '../../src/call/version';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import { readCustomProperty, withCustomProperty } from '../../src/package/customProperties';
import type { Workbook } from '../../src/package/model';
import { alarm } from '../../src/panel/share/checkDesk';
import { saveCalculated, savedWith } from '../../src/workbook/basis';
import { checkWorkbook } from '../../src/workbook/check';
import { recalculate } from '../../src/workbook/recalculate';

const ids = worksheetFunctions.map(({ id }) => id);
const opened = (bytes: Uint8Array) => readWorkbook(bytes, ids);

/** What basis 1 gave, from its changelog; the others as any basis gives them. */
const OLD: Readonly<Record<string, number>> = { A1: 99.77, A2: 2 * 99.77, A6: 99.77 };
const RELEASE = 'MOLD.SEAT.RELEASE("1 kN",7,0.15,,"mm")';

/** A design sheet as basis 1 left it. */
async function ofBasis1(): Promise<Workbook> {
  const workbook = newWorkbook({
    sheets: [
      {
        name: 'Seat',
        cells: {
          A1: { formula: RELEASE },
          A2: { formula: 'A1*2' },
          A3: { formula: 'MOLD.SEAT.FORCE(1000,30,0,"mm")' },
          A4: { formula: 'MOLD.SEAT.FORCE(2000,30,0,"mm")' },
          A5: { formula: 'IF(A3>0,7,8)' },
          A6: { formula: 'SUM(A1:A1)' },
        },
      },
    ],
  });
  const results = await recalculate(workbook, worksheetFunctions);
  const stored = results.map((one) => ({ ...one, value: OLD[`A${one.row + 1}`] ?? one.value }));
  // The result of another cell is stale for a reason of its own.
  return opened(
    saveWorkbook(
      workbook,
      stored.map((one) => (one.row === 3 ? { ...one, value: 1 } : one)),
    ),
  );
}

const REASON = expect.stringMatching(/^SEAT\.RELEASE: An elastic seat keeps its radial force/) as unknown;

describe('a sheet that was saved with an earlier basis', () => {
  it('lists each value that changed with the basis and all that follows from it, with the reason; others without', async () => {
    const { changed } = checkWorkbook(await ofBasis1(), worksheetFunctions);
    const told = changed.map(({ cell, before, because }) => [cell, before, because]);
    expect(told).toEqual([
      ['A1', 99.77, [REASON]],
      ['A4', 1, []],
      ['A2', 2 * 99.77, [REASON]],
      ['A6', 99.77, [REASON]],
    ]);
    expect(changed[0]?.now).toBeCloseTo(96.16, 2);
  });

  it('is told of the same when it is recalculated', async () => {
    const results = await recalculate(await ofBasis1(), worksheetFunctions);
    expect(results.map(({ row, because }) => [row, because.length])).toEqual([
      [0, 1],
      [1, 1],
      [2, 0],
      [3, 0],
      [4, 0],
      [5, 1],
    ]);
  });

  it('asks on the page before it is saved, apart from results that are only stale', async () => {
    expect(alarm(checkWorkbook(await ofBasis1(), worksheetFunctions))).toMatch(
      /^3 results are others since functions answer otherwise; 1 result differs from the stored one/,
    );
  });

  it('is told of a function that another one is given by name', () => {
    const workbook = newWorkbook({
      sheets: [
        {
          name: 'Seat',
          cells: { A1: { formula: 'MOLD.SHOW.WORK("SEAT.RELEASE","1 kN",7,0.15,,"mm")', value: 'old' } },
        },
      ],
    });
    const { changed } = checkWorkbook(opened(saveWorkbook(workbook, [])), worksheetFunctions);
    expect(changed[0]).toMatchObject({ before: 'old', because: [REASON] });
  });
});

describe('the basis in a file', () => {
  it('is written with the values of this one, and nothing is laid to the basis from then on', async () => {
    const before = await ofBasis1();
    expect(savedWith(before)).toBe(1);
    const after = opened(saveCalculated(before, await recalculate(before, worksheetFunctions)));
    expect(savedWith(after)).toBe(BASIS);
    expect(checkWorkbook(after, worksheetFunctions).changed).toEqual([]);
    const stale = opened(
      saveWorkbook(after, [{ sheet: 'Seat', row: 0, column: 0, formula: RELEASE, value: 99.77 }]),
    );
    expect(checkWorkbook(stale, worksheetFunctions).changed).toMatchObject([{ cell: 'A1', because: [] }]);
  });

  it('is not written into a workbook without our functions', () => {
    const plain = newWorkbook({ sheets: [{ name: 'A', cells: { A1: { formula: '1+1', value: 2 } } }] });
    expect(opened(saveCalculated(plain, [])).parts.has('docProps/custom.xml')).toBe(false);
  });

  it('stands beside the properties of others and takes the place of its own', () => {
    const plain = newWorkbook({ sheets: [{ name: 'A', cells: { A1: 1 } }] });
    const first = withCustomProperty(
      withCustomProperty(plain, 'Order <7>', 'A & B'),
      'Moldsheet',
      'basis 1, 1.0.0',
    );
    const second = opened(
      saveWorkbook(withCustomProperty(opened(saveWorkbook(first, [])), 'Moldsheet', 'basis 2, 2.0.0'), []),
    );
    expect(readCustomProperty(second, 'Order <7>')).toBe('A & B');
    expect(readCustomProperty(second, 'Moldsheet')).toBe('basis 2, 2.0.0');
    const xml = new TextDecoder().decode(second.parts.get('docProps/custom.xml'));
    expect(xml.match(/pid="\d+"/g)).toHaveLength(2);
    expect(new Set(xml.match(/pid="\d+"/g))).toHaveProperty('size', 2);
  });
});
