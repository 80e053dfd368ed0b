import { beforeEach, describe, expect, it, vi } from 'vitest';
import { CellError } from '../../src/cells/value';
import { ExcelHost, wholeCall } from '../../src/excel/host';
import { readPanelState } from '../../src/excel/panelState';
import { reenterFormulas } from '../../src/excel/reenter';
import { separatorIn } from '../../src/excel/separator';
import { installStandIn, type StandIn } from './standIn/install';
import { StandInWorkbook } from './standIn/workbook';

const host = new ExcelHost();
let workbook: StandInWorkbook;
let standIn: StandIn;

beforeEach(() => {
  workbook = new StandInWorkbook();
  const globals: Record<string, unknown> = {};
  standIn = installStandIn(globals, (steps) => workbook.execute(steps));
  for (const [name, value] of Object.entries(globals)) vi.stubGlobal(name, value);
});

const at = (row: number, column: number, rows = 1, columns = 1) => ({
  sheet: 'Sheet1',
  row,
  column,
  rows,
  columns,
});
/** A formula of ours that spills down: one answer for each draft in A1:A2. */
const SPILL = '=MOLD.SEAT.FORCE(100,A1:A2,0.15)';

describe('the Excel host', () => {
  it('tells the selected cells', async () => {
    workbook.select('Sheet1', 'B3:C5');
    expect(await host.readSelection()).toEqual(at(2, 1, 3, 2));
  });

  it('calls back when the selection or a result changes, until it is told to stop', async () => {
    const listener = vi.fn();
    const stop = host.onSelectionChange(listener);
    await vi.waitFor(() => {
      standIn.fire('onSelectionChanged');
      expect(listener).toHaveBeenCalled();
    });
    listener.mockClear();
    standIn.fire('onCalculated');
    standIn.fire('onChanged');
    expect(listener).toHaveBeenCalledTimes(2);
    stop();
    await vi.waitFor(() => {
      listener.mockClear();
      standIn.fire('onSelectionChanged');
      expect(listener).not.toHaveBeenCalled();
    });
  });

  it('reads numbers, text, blanks, errors and formulas', async () => {
    await host.write(at(0, 0, 2, 3), [
      [1.5, 'P20', null],
      [true, '=1/0', '=A1*2'],
    ]);
    expect(await host.read(at(0, 0, 2, 3))).toEqual([
      [
        { formula: '', value: 1.5 },
        { formula: '', value: 'P20' },
        { formula: '', value: null },
      ],
      [
        { formula: '', value: true },
        { formula: '=1/0', value: new CellError('#DIV/0!') },
        { formula: '=A1*2', value: 3 },
      ],
    ]);
  });

  it('shows the formula of a spilled table in its first cell only', async () => {
    await host.write(at(0, 0, 2, 2), [
      [5, SPILL],
      [10, null],
    ]);
    const cells = await host.read(at(0, 0, 2, 2));
    expect(cells.map(([, right]) => right?.formula)).toEqual([SPILL, '']);
    // F/(sin a + µ cos a) by hand: 100/(0.0871557 + 0.15*0.9961947), 100/(0.1736482 + 0.15*0.9848078)
    expect(cells[0]?.[1]?.value).toBeCloseTo(422.681, 2);
    expect(cells[1]?.[1]?.value).toBeCloseTo(311.168, 2);
    expect((await host.read(at(1, 1)))[0]?.[0]?.formula).toBe('');
  });

  it('gives formulas in the spelling that people type', async () => {
    workbook
      .sheet('Sheet1')
      .put(0, 0, { formula: '_xldudf_MOLD_SEAT_FREEDRAFT(0.15)', value: new CellError('#NAME?') });
    workbook.sheet('Sheet1').put(1, 0, { formula: '@MOLD.SEAT.FREEDRAFT(0.15)', value: 1 });
    expect((await host.read(at(0, 0, 2, 1))).map(([cell]) => cell?.formula)).toEqual([
      '=MOLD.SEAT.FREEDRAFT(0.15)',
      '=MOLD.SEAT.FREEDRAFT(0.15)',
    ]);
  });

  it('writes text as text where Excel would read a date, a time or a truth value', async () => {
    const texts = ['1/2 in', '12 a', 'TRUE', '-x', 'May 5', 'music wire'];
    await host.write(at(0, 0, 1, texts.length), [texts]);
    expect((await host.read(at(0, 0, 1, texts.length)))[0]?.map(({ value }) => value)).toEqual(texts);
  });

  it('enters a chosen function whole, so that the cell says what is missing', async () => {
    workbook.select('Sheet1', 'C4');
    await host.insertFormula('=MOLD.SEAT.FORCE(');
    const [[cell] = []] = await host.read(at(3, 2));
    expect(cell).toMatchObject({ formula: '=MOLD.SEAT.FORCE(,,)', value: { code: '#VALUE!' } });
    expect(wholeCall('=MOLD.NO.SUCH(')).toBe('=MOLD.NO.SUCH(');
    expect(readPanelState().notice?.text).toContain('press F2');
  });

  it('says so where Excel lets nothing be entered', async () => {
    workbook.sheet('Sheet1').protection.protected = true;
    await host.insertFormula('=MOLD.SEAT.FORCE(');
    expect(readPanelState().notice?.intent).toBe('error');
    expect(readPanelState().notice?.text).toMatch(
      /^Nothing was entered\. Excel refused: a sheet.* is protected\..*Review, Unprotect Sheet/,
    );
  });

  it('says so where a cell is being typed into', async () => {
    workbook.isEditing = true;
    await host.insertFormula('=MOLD.SEAT.FORCE(');
    expect(readPanelState().notice?.text).toMatch(
      /^Nothing was entered\. A cell is being edited\. Finish it with Enter/,
    );
    workbook.isEditing = false;
  });

  it('puts a list of words on a cell, and leaves a rule that is there alone', async () => {
    await host.offerWords(at(2, 2), ['worst', 'rss']);
    expect([...workbook.sheet('Sheet1').validations.values()]).toEqual([
      { cells: 'C3', choices: ['worst', 'rss'] },
    ]);
    await expect(host.offerWords(at(2, 2), ['a'])).rejects.toThrow('C3 has a rule for its entries already');
  });

  it('makes text of cells, so that a thread typed there is no date', async () => {
    const sheet = workbook.sheet('Sheet1');
    sheet.type(0, 0, '10-24');
    await host.formatAsText(at(1, 0, 2, 1));
    sheet.type(1, 0, '10-24');
    expect(sheet.getRangeByIndexes(0, 0, 2, 1).values).toEqual([[expect.any(Number)], ['10-24']]);
  });

  it('enters formulas in an Excel of another country as it does at home', async () => {
    workbook.separator = ';';
    await host.write(at(0, 0), [['=MOLD.SEAT.FORCE(100,5,0.15)']]);
    expect((await host.read(at(0, 0)))[0]?.[0]?.value).toBeCloseTo(422.681, 3);
    expect(workbook.sheet('Sheet1').getRangeByIndexes(0, 0, 1, 1).formulasLocal).toEqual([
      ['=MOLD.SEAT.FORCE(100;5;0.15)'],
    ]);
    await expect(host.write(at(1, 0), [['=MOLD.SEAT.FORCE(100;5;0.15)']])).rejects.toThrow('semicolon');
  });

  it('knows the sign between arguments from a formula, and guesses it from the decimal sign', async () => {
    expect(await host.readSeparator()).toEqual({ sign: ',', isGuess: true });
    workbook.decimalSeparator = ',';
    expect(await host.readSeparator()).toEqual({ sign: ';', isGuess: true });
    workbook.separator = ';';
    await host.write(at(0, 0, 1, 3), [['="a,b"', '=SUM({1,2})', '=MOLD.SEAT.FORCE(100,5,0.15)']]);
    expect(await host.readSeparator()).toEqual({ sign: ';', isGuess: false });
    // Signs in texts and in arrays say nothing.
    expect(separatorIn('=A1&"a,b"', '=A1&"a,b"')).toBeUndefined();
    expect(separatorIn('=SUM({1,2},3)', '=SUMME({1.2};3)')).toBe(';');
    expect(separatorIn('=SUM(1,2)', '=SUM(1,2)')).toBe(',');
  });

  it('waits until the sheet has settled', async () => {
    workbook.mode = 'Manual';
    await host.write(at(0, 0, 1, 2), [[2, '=A1*3']]);
    await host.recalculate();
    expect((await host.read(at(0, 1)))[0]?.[0]?.value).toBe(6);
  });
});

describe('re-entering formulas', () => {
  it('binds what came in unbound, and leaves all else alone', async () => {
    const sheet = workbook.sheet('Sheet1');
    sheet.put(0, 0, { formula: 'MOLD.SEAT.FREEDRAFT(0.15)', value: new CellError('#NAME?') });
    sheet.put(1, 0, { formula: '_xldudf_MOLD_SEAT_FREEDRAFT(0.15)', value: new CellError('#NAME?') });
    sheet.put(2, 0, { formula: '@MOLD.SEAT.FREEDRAFT(0.15)', value: 8 });
    sheet.put(3, 0, { formula: 'NOSUCH(1)', value: new CellError('#NAME?') });
    sheet.put(4, 0, { value: 'MOLD.SEAT.FREEDRAFT' });
    expect(await reenterFormulas()).toEqual({ count: 3, locked: [] });
    const cells = await host.read(at(0, 0, 5, 1));
    // atan 0.15 by hand: 8.5308 degrees
    for (const [cell] of cells.slice(0, 3)) expect(cell?.value).toBeCloseTo(8.5308, 3);
    expect(cells[3]?.[0]?.value).toEqual(new CellError('#NAME?'));
    expect(await reenterFormulas()).toEqual({ count: 0, locked: [] });
  });

  it('names the sheets that are protected', async () => {
    const sheet = workbook.sheet('Sheet1');
    sheet.put(0, 0, { formula: 'MOLD.SEAT.FREEDRAFT(0.15)', value: new CellError('#NAME?') });
    sheet.protection.protected = true;
    expect(await reenterFormulas()).toEqual({ count: 0, locked: ['Sheet1'] });
  });
});
