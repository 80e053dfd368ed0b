import { beforeEach, describe, expect, it, vi } from 'vitest';
import { excelFiles, readFile } from '../../src/excel/files';
import { copyOfOpenWorkbook } from '../../src/excel/trial';
import { runWhatIf } from '../../src/whatif/run';
import { readCell } from '../../src/whatif/plan';
import { installStandIn } from './standIn/install';
import { StandInWorkbook } from './standIn/workbook';

let workbook: StandInWorkbook;
let globals: Record<string, unknown>;
beforeEach(async () => {
  workbook = new StandInWorkbook();
  globals = {};
  installStandIn(globals, (steps) => workbook.execute(steps));
  for (const name of ['Excel', 'Office']) vi.stubGlobal(name, globals[name]);
  const sheet = workbook.sheet('Sheet1');
  ['Push', 100, 'lbf'].forEach((content, column) => {
    sheet.type(0, column, content);
  });
  ['Draft', 5, 'deg'].forEach((content, column) => {
    sheet.type(1, column, content);
  });
  ['Seat force', '=MOLD.SEAT.FORCE(B1,B2,0.15)', 'lbf'].forEach((content, column) => {
    sheet.type(2, column, content);
  });
  await workbook.execute([]);
});

const at = (address: string) => readCell(address, 'Sheet1');

describe('the file of the open workbook', () => {
  it('is put together from its slices, and let go', async () => {
    const whole = Uint8Array.from({ length: 10 }, (_, i) => i);
    const closed = vi.fn();
    const file = {
      size: 10,
      sliceCount: 3,
      getSliceAsync: (index: number, done: (result: unknown) => void) => {
        done({ status: 'succeeded', value: { data: [...whole.slice(index * 4, index * 4 + 4)] } });
      },
      closeAsync: closed,
    };
    const getFileAsync = (_type: unknown, _options: unknown, done: (result: unknown) => void) => {
      done({ status: 'succeeded', value: file });
    };
    vi.stubGlobal('Office', { ...(globals['Office'] as object), context: { document: { getFileAsync } } });
    expect(await readFile()).toEqual(whole);
    expect(closed).toHaveBeenCalledOnce();
    file.getSliceAsync = (_index, done) => {
      done({ status: 'failed', error: { message: 'The file is too large.' } });
    };
    await expect(readFile()).rejects.toThrow('The file is too large.');
    expect(closed).toHaveBeenCalledTimes(2);
  });

  it('is named as on the disk or on the web', () => {
    const named = (url: string) => {
      vi.stubGlobal('Office', { context: { document: { url } } });
      return excelFiles.name();
    };
    expect(named('C:\\Sheets\\seat.xlsx')).toBe('seat.xlsx');
    expect(named('https://files.example/sheets/seat%20force.xlsx')).toBe('seat force.xlsx');
    expect(named('/Users/me/75% full.xlsx')).toBe('75% full.xlsx');
    expect(named('')).toBe('workbook.xlsx');
  });
});

describe('a what-if in Excel', () => {
  it('is run on a copy, without a single write to the workbook', async () => {
    const copy = await copyOfOpenWorkbook([at('B2')], [at('B3')]);
    if (!copy) throw new Error('no copy');
    const executed = vi.spyOn(workbook, 'execute');
    const outcome = await runWhatIf(copy, {
      vary: [{ cell: at('B2'), values: [5, 10] }],
      results: [at('B3')],
    });
    copy.dispose();
    // F/(sin a + µ cos a) by hand: 100/(0.0871557 + 0.15 × 0.9961947), 100/(0.1736482 + 0.15 × 0.9848078)
    expect(outcome.rows[0]?.results[0]).toBeCloseTo(422.681, 3);
    expect(outcome.rows[1]?.results[0]).toBeCloseTo(311.168, 3);
    expect(executed).not.toHaveBeenCalled();
  });

  it('is run in the workbook itself where a function on the way is another add-in’s', async () => {
    workbook.sheet('Sheet1').type(2, 1, '=OTHER.FORCE(B1,B2)');
    await workbook.execute([]);
    expect(await copyOfOpenWorkbook([at('B2')], [at('B3')])).toBeUndefined();
  });

  it('is run in the workbook itself where Excel shows another value than the copy', async () => {
    workbook.sheet('Sheet1').put(2, 1, { formula: 'MOLD.SEAT.FORCE(B1,B2,0.15)', value: 400 });
    expect(await copyOfOpenWorkbook([at('B2')], [at('B3')])).toBeUndefined();
  });

  it('is run in the workbook itself where Excel does not hand over the file', async () => {
    vi.stubGlobal('Office', { context: { document: {} } });
    expect(await copyOfOpenWorkbook([at('B2')], [at('B3')])).toBeUndefined();
  });
});
