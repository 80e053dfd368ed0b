import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { checkWorkbook } from '../../src/workbook/check';
import type { CellDescription } from '../../src/package/description';
import { recalculate } from '../../src/workbook/recalculate';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';

const ids = worksheetFunctions.map(({ id }) => id);

async function check(
  cells: Readonly<Record<string, CellDescription | string | number>>,
  stored?: Readonly<Record<string, number>>,
) {
  const workbook = newWorkbook({ sheets: [{ name: 'Sheet', cells }] });
  const results = (await recalculate(workbook, worksheetFunctions)).map((one) =>
    stored && one.row === 0 ? { ...one, value: stored['row 1'] ?? one.value } : one,
  );
  return checkWorkbook(readWorkbook(saveWorkbook(workbook, results), ids), worksheetFunctions);
}

describe('the check of a workbook', () => {
  it('finds nothing wrong with a sheet as it was saved', async () => {
    const report = await check({ A1: { formula: 'MOLD.SEAT.FORCE(100,10,0.1)' } });
    expect(report).toMatchObject({
      formulas: 1,
      changed: [],
      unknown: [],
      otherUnits: [],
      outside: [],
    });
  });

  it('lists every result in error with what it says, the spilled ones too', async () => {
    const { errors } = await check({
      A1: { formula: 'MOLD.SEAT.FORCE(D1:D3,10,0.1)' },
      B1: { formula: '1/0' },
      C1: { formula: 'ROUND(2.5,0)' },
      D1: 100,
      D2: 'x',
      D3: 100,
    });
    expect(errors).toEqual([
      {
        sheet: 'Sheet',
        cell: 'A2',
        says: expect.stringMatching(/^#VALUE! push is "x"; it takes a force/) as string,
      },
      { sheet: 'Sheet', cell: 'B1', says: expect.stringMatching(/^#DIV\/0! /) as string },
    ]);
  });

  it('lists a result that is another one today, old and new', async () => {
    const { changed } = await check({ A1: { formula: 'MOLD.SEAT.FORCE(100,30,0)' } }, { 'row 1': 199 });
    expect(changed).toEqual([
      {
        sheet: 'Sheet',
        cell: 'A1',
        formula: 'MOLD.SEAT.FORCE(100,30,0)',
        before: 199,
        now: expect.closeTo(200, 9) as unknown,
        because: [],
      },
    ]);
  });

  it('names a function that there is not, with the nearest', async () => {
    const { unknown } = await check({ A1: { formula: 'MOLD.SEAT.FORSE(100,30,0)' } });
    expect(unknown[0]).toMatchObject({
      cell: 'A1',
      says: expect.stringMatching(/no function MOLD\.SEAT.FORSE.*MOLD\.SEAT\.FORCE/) as unknown,
    });
  });

  it('asks for the units of a wall of 2 in, which is usual in millimetres', async () => {
    const { otherUnits } = await check({ B1: 2, A1: { formula: 'MOLD.COOL.TIME(B1,"ABS",450,120,190)' } });
    expect(otherUnits[0]?.says).toMatch(
      /wall 2 in \(B1\): usually .* would be usual in mm: is the unit as meant\?/,
    );
    const { otherUnits: none } = await check({
      B1: 2,
      A1: { formula: 'MOLD.COOL.TIME(B1,"ABS",230,50,90,,"mm")' },
    });
    expect(none).toEqual([]);
  });

  it('takes the fraction of a cell in percent as SHOW.CHECK does', async () => {
    const { outside } = await check({
      B1: 0.75,
      B2: 0.9,
      A1: { formula: 'MOLD.TAP.DRILL("M6",B1,"mm")' },
      A2: { formula: 'MOLD.TAP.DRILL("M6",B2,"mm")' },
    });
    expect(outside.map(({ cell, says }) => [cell, says])).toContainEqual([
      'A2',
      'TAP.DRILL, percent 90% (B2): usually 50 to 85%',
    ]);
    expect(outside.map(({ cell }) => cell)).not.toContain('A1');
  });

  it('looks at a quantity in text too, whose unit is as meant', async () => {
    const { outside, otherUnits } = await check({ A1: { formula: 'MOLD.SPRING.RATE("0.08 mm",10,8,"mm")' } });
    expect(outside.map(({ says }) => says)).toContain('SPRING.RATE, wire 0.08 mm: usually 0.1 to 16 mm');
    expect(otherUnits).toEqual([]);
  });

  it('calls no result another one where the file held none', async () => {
    const bare = newWorkbook({
      sheets: [{ name: 'Sheet', cells: { A1: { formula: 'MOLD.TAP.DRILL("M6")' } } }],
    });
    const saved = readWorkbook(saveWorkbook(bare, []), ids);
    expect(checkWorkbook(saved, worksheetFunctions).changed).toEqual([]);
    const [result] = await recalculate(saved, worksheetFunctions);
    expect(result).toMatchObject({ changed: true, because: [] });
  });

  it('tells a friction of 0 as SHOW.CHECK does', async () => {
    const { outside, otherUnits } = await check({ A1: { formula: 'MOLD.SEAT.FORCE(2000,5,0)' } });
    expect(outside.map(({ says }) => says)).toContain('SEAT.FORCE, friction 0: usually 0.05 to 0.6');
    expect(otherUnits).toEqual([]);
  });

  it('tells what lies outside an equation’s range, and what to watch for', async () => {
    const { outside, cautions } = await check({
      A1: { formula: 'MOLD.SPRING.RATE(2,50,5,,"mm")' },
      A2: { formula: 'MOLD.SEAT.FORCE(100,2,0.3)' },
    });
    expect(outside[0]).toMatchObject({
      cell: 'A1',
      says: expect.stringContaining('between 4 and 12') as unknown,
    });
    expect(cautions.map(({ says }) => says).join(' ')).toContain('Self-locking');
  });

  it('takes a row that is kept free for no blank input', async () => {
    const { blank } = await check({ A1: { formula: 'IF(B1="","",MOLD.SEAT.FORCE(B1,B2,0.15,B3))' }, B2: 10 });
    expect(blank).toEqual([]);
  });

  it('names needed inputs whose cells are blank, and no optional ones', async () => {
    const { blank } = await check({ A1: { formula: 'MOLD.SEAT.FORCE(B1,B2,0.15,B3)' }, B2: 10 });
    expect(blank).toEqual([{ sheet: 'Sheet', cell: 'A1', says: 'SEAT.FORCE needs push, and B1 is blank.' }]);
  });
});
