import { beforeEach, describe, expect, it, vi } from 'vitest';
import { CellError } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import { carryOut, labelOf } from '../../src/excel/check/cures';
import { examine, type Finding } from '../../src/excel/check/examine';
import { readFacts } from '../../src/excel/check/facts';
import { cellText } from '../../src/whatif/plan';
import { installStandIn, type StandIn } from './standIn/install';
import { StandInWorkbook } from './standIn/workbook';

let workbook: StandInWorkbook;
let standIn: StandIn;

beforeEach(() => {
  workbook = new StandInWorkbook();
  const globals: Record<string, unknown> = {};
  standIn = installStandIn(globals, (steps) => workbook.execute(steps));
  for (const [name, value] of Object.entries(globals)) vi.stubGlobal(name, value);
});

const sheet = () => workbook.sheet('Sheet1');
const type = (row: number, column: number, input: unknown) => {
  sheet().type(row, column, input);
};
const shows = (row: number, column: number): unknown =>
  sheet().getRangeByIndexes(row, column, 1, 1).values[0]?.[0];

const look = async (entered: readonly string[] = []): Promise<Finding[]> => {
  await workbook.execute([]);
  return examine(await readFacts(), worksheetFunctions, new Set(entered));
};
/** Each finding in one line: its cell, what it says, its buttons. */
const lines = (findings: readonly Finding[]): string[] =>
  findings.map(
    ({ group, at, says, cures }) =>
      `${group} | ${at ? cellText(at) : ''} ${says} | ${cures.map(labelOf).join(', ')}`,
  );

describe('a check of the open workbook', () => {
  it('finds nothing in a sheet that is right, and reads one with nothing in it', async () => {
    expect(await look()).toEqual([]);
    type(0, 0, 100);
    type(0, 1, '=MOLD.SEAT.FORCE(A1,5,0.15)');
    expect(await look()).toEqual([]);
  });

  it('tells why a cell is in error, in the words that Excel keeps to itself', async () => {
    type(0, 0, -1);
    type(0, 1, '=MOLD.SEAT.FORCE(A1,5,0.15)');
    type(1, 1, '=1/0');
    const [ours, own] = lines(await look());
    expect(ours).toMatch(/^errors \| Sheet1!B1 #VALUE! push is -1 lbf; it must be .* \| Go to B1$/);
    expect(own).toBe('errors | Sheet1!B2 #DIV/0! | Go to B2');
  });

  it('tells a spilled formula once', async () => {
    type(0, 0, -5);
    type(1, 0, -10);
    type(0, 1, '=MOLD.SEAT.FORCE(100,A1:A2,0.15)');
    expect((await look()).map(({ at }) => at && cellText(at))).toEqual(['Sheet1!B1']);
  });

  it('writes a thread that became a date as the text that it was', async () => {
    type(0, 0, '10-24');
    type(0, 1, '=MOLD.TAP.DRILL(A1)');
    const found = await look();
    expect(typeof shows(0, 0)).toBe('number');
    expect(lines(found)).toEqual([
      expect.stringMatching(
        /^errors \| Sheet1!B1 #VALUE! .*was 10-24 typed\?.* \| Write 10-24 as text into A1, Go to B1$/,
      ),
    ]);
    const [cure] = found[0]?.cures ?? [];
    if (cure) await carryOut(cure);
    expect(shows(0, 0)).toBe('10-24');
    expect(typeof shows(0, 1)).toBe('number');
    // Typed anew, it stays a text.
    type(0, 0, '10-32');
    expect(await look()).toEqual([]);
  });

  it('finds blank inputs: the required, and the optional that 0 would change', async () => {
    type(0, 1, '=MOLD.SEAT.FORCE(A1,5,0.15)');
    type(1, 1, '=MOLD.PRESS.SCREWCLAMP("25 N m","4 mm","18 mm",0.15,A2)');
    const blanks = (await look()).filter(({ group }) => group === 'blank');
    expect(lines(blanks)[0]).toBe(
      'blank | Sheet1!A1 is blank: SEAT.FORCE in Sheet1!B1 needs push. | Go to A1',
    );
    await carryOut({ does: 'go', to: { sheet: 'Sheet1', row: 0, column: 0 } });
    expect(workbook.selection).toMatchObject({ row: 0, column: 0 });
  });

  it('finds a blank cell of a range that Excel would take for 0', async () => {
    for (const [row, value] of [1, '', 3].entries()) type(row, 0, value);
    for (const row of [0, 1, 2]) type(row, 1, 'in');
    type(0, 3, '=MOLD.UNIT.CONVERT(A1:A3,B1:B3,"mm")');
    const blanks = (await look()).filter(({ group }) => group === 'blank');
    expect(lines(blanks)).toEqual([
      'blank | Sheet1!A2 is blank: Excel may hand it to UNIT.CONVERT in Sheet1!D1 as 0, not as left out. Type its value, or take the cell out of the formula. | Go to A2',
    ]);
  });

  it('says that a sheet is protected where a cure would be refused, and counts nothing there as entered', async () => {
    type(0, 0, '10-24');
    type(0, 1, '=MOLD.TAP.DRILL(A1)');
    sheet().put(1, 1, { formula: 'MOLD.SEAT.FREEDRAFT(0.15)', value: new CellError('#NAME?') });
    await workbook.execute([]);
    sheet().protection.protected = true;
    const found = lines(await look());
    expect(found.find((line) => line.startsWith('lost'))).toMatch(
      /Sheet1 is protected: take that off first\. \| Unprotect Sheet1, Enter them again$/,
    );
    expect(found.find((line) => line.startsWith('errors'))).toMatch(
      /Sheet1 is protected: take that off first\. \| Unprotect Sheet1, Write 10-24 as text into A1, Go to B1$/,
    );
  });

  it('enters again what lost the add-in, and asks for the list of functions where that does not help', async () => {
    sheet().put(0, 0, { formula: 'MOLD.SEAT.FREEDRAFT(0.15)', value: new CellError('#NAME?') });
    const lost = await look();
    expect(lost.map(({ group }) => group)).toEqual(['lost']);
    expect(await carryOut({ does: 're-enter' })).toBe('1 formula entered again.');
    expect(await look()).toEqual([]);
    sheet().put(0, 0, { formula: 'MOLD.SEAT.FREEDRAFT(0.15)', value: new CellError('#NAME?') });
    const old = await look(['Sheet1!A1']);
    expect(lines(old)).toEqual([
      expect.stringMatching(/^oldList \| Sheet1!A1 .*older list of functions, without SEAT.FREEDRAFT/),
    ]);
    expect(await carryOut({ does: 'fetch the list' })).toContain('open it again');
    expect(standIn.settings).toEqual({ 'Office.ForceRefreshCustomFunctionsCache': true });
  });

  it('tells a function that this version has not from one that is lost', async () => {
    sheet().put(0, 0, { formula: 'MOLD.SEAT.NOSUCH(1)', value: new CellError('#NAME?') });
    expect(lines(await look())[0]).toContain('There is no function SEAT.NOSUCH in this version.');
  });

  it('finds manual and iterative calculation and ends both', async () => {
    workbook.mode = 'Manual';
    workbook.iteration.enabled = true;
    const found = await look();
    expect(found.map(({ group }) => group)).toEqual(['mode', 'mode']);
    for (const cure of found.flatMap(({ cures }) => cures)) await carryOut(cure);
    expect([workbook.mode, workbook.iteration.enabled]).toEqual(['Automatic', false]);
    expect(await look()).toEqual([]);
  });

  it('finds protected sheets with MOLD formulas, and says so where a password keeps them', async () => {
    type(0, 0, '=MOLD.SEAT.FREEDRAFT(0.15)');
    workbook.addSheet('Other').protection.protected = true;
    expect(await look()).toEqual([]);
    sheet().protection.protected = true;
    sheet().protection.password = 'x';
    const [found] = await look();
    expect(found?.group).toBe('protected');
    const [cure] = found?.cures ?? [];
    if (!cure) throw new Error('no cure');
    await expect(carryOut(cure)).rejects.toThrow('Sheet1 has a password');
    sheet().protection.password = '';
    await carryOut(cure);
    expect(await look()).toEqual([]);
  });

  it('tells of a data table of Excel', async () => {
    sheet().put(3, 3, { formula: 'TABLE(,A1)', value: 0 });
    expect(lines(await look())[0]).toMatch(/^tables \| Sheet1!D4 .*What if tab, TRY\.TABLE and TRY\.SOLVE/);
  });
});
