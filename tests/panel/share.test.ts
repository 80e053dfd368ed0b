import { beforeEach, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { CheckDesk, alarm } from '../../src/panel/share/checkDesk';
import { ShareDesk } from '../../src/panel/share/desk';
import { groupsOf } from '../../src/share/groups';
import { renamed, type WorkbookFiles } from '../../src/panel/share/files';
import { recalculate } from '../../src/workbook/recalculate';
import { parseCell } from '../../src/cells/address';
import { cellFinder, type Workbook } from '../../src/package/model';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';

const ids = worksheetFunctions.map(({ id }) => id);

/** A seat in B3 from a push in B1 and a draft in B2, a drill in B4. */
const seat = (stored: { readonly seat?: number } = {}): Workbook =>
  newWorkbook({
    sheets: [
      {
        name: 'Seat',
        cells: {
          A1: { value: 'Push, lbf' },
          B1: { value: 100 },
          A2: { value: 'Draft, deg' },
          B2: { value: 5 },
          // F/(sin a + µ cos a) by hand: 100/(0.0871557 + 0.15 × 0.9961947)
          B3: { formula: 'MOLD.SEAT.FORCE(B1,B2,0.15)', value: stored.seat ?? 422.681 },
          B4: { formula: 'B3*2', value: 2 * (stored.seat ?? 422.681) },
        },
      },
    ],
  });

const calculated = async (workbook: Workbook): Promise<Workbook> =>
  readWorkbook(saveWorkbook(workbook, await recalculate(workbook, worksheetFunctions)), ids);

let open: Workbook;
const files: WorkbookFiles = {
  name: () => 'seat.xlsx',
  read: () => Promise.resolve(open),
};
beforeEach(async () => {
  open = await calculated(seat());
});

const cell = (workbook: Workbook, address: string) => {
  const [sheet] = workbook.sheets;
  const { row, column } = parseCell(address) ?? { row: 0, column: 0 };
  return sheet && cellFinder(sheet)(row, column);
};

const fileOf = (bytes: Uint8Array | undefined, name: string): File => {
  if (!bytes) throw new Error('no file');
  return new File([bytes as BlobPart], name);
};

describe('a copy for a colleague', () => {
  it('is made of the open workbook as chosen, named after it, with a report', async () => {
    const desk = new ShareDesk(files);
    await desk.share();
    const { shared, problem, busy } = desk.state;
    expect([problem, busy]).toEqual([undefined, undefined]);
    expect(shared?.fileName).toBe('seat native.xlsx');
    expect(shared?.cells).toMatchObject([{ sheet: 'Seat', cell: 'B3', how: 'native' }]);
    const copy = readWorkbook(shared?.bytes ?? new Uint8Array(), ids);
    expect(cell(copy, 'B3')?.formula).not.toContain('MOLD');
    expect(cell(copy, 'B3')?.value).toBeCloseTo(422.681, 3);
    expect(copy.sheets.map(({ name }) => name)).toContain('Basis');
  });

  it('holds values only, and no basis, where that is chosen', async () => {
    const desk = new ShareDesk(files);
    desk.choose({ as: 'values', basis: false });
    await desk.share();
    expect(desk.state.shared?.fileName).toBe('seat values.xlsx');
    const copy = readWorkbook(desk.state.shared?.bytes ?? new Uint8Array(), ids);
    expect(copy.sheets.filter(({ state }) => state === 'visible')).toHaveLength(1);
    expect(copy.sheets[0]?.cells.filter(({ formula }) => formula !== undefined)).toEqual([]);
  });

  it('is taken back when another kind is chosen, so that no report stands beside the wrong choice', async () => {
    const desk = new ShareDesk(files);
    await desk.share();
    desk.choose({ as: 'values' });
    expect(desk.state.shared).toBeUndefined();
  });

  it('is not made where nothing would change', async () => {
    open = newWorkbook();
    const desk = new ShareDesk(files);
    await desk.share();
    expect(desk.state.shared).toBeUndefined();
    expect(desk.state.problem).toContain('can be sent as it is');
  });

  it('says why it could not be made, and can be tried again', async () => {
    let reads = 0;
    const desk = new ShareDesk({
      ...files,
      read: () => (reads++ === 0 ? Promise.reject(new Error('Excel is busy.')) : Promise.resolve(open)),
    });
    await desk.share();
    expect(desk.state).toMatchObject({ problem: 'Excel is busy.', busy: undefined });
    await desk.share();
    expect(desk.state.problem).toBeUndefined();
    expect(desk.state.shared).toBeDefined();
  });

  it('is reported with what needs a look first', () => {
    const one = { sheet: 'Seat', cell: 'B3', formula: '', why: '' };
    const groups = groupsOf([
      { ...one, how: 'native' },
      { ...one, how: 'frozen', why: 'it tries' },
      { ...one, how: 'refused', why: 'a draft of 0' },
      { ...one, how: 'frozen', why: 'it tries' },
      { ...one, how: 'native' },
    ]);
    expect(groups.map(({ how, cells, reasons }) => [how, cells.length, reasons.length])).toEqual([
      ['refused', 1, 1],
      ['frozen', 2, 1],
      ['native', 2, 1],
    ]);
  });
});

describe('a copy that came back', () => {
  it('has its formulas again and tells what the colleague changed', async () => {
    const desk = new ShareDesk(files);
    await desk.share();
    const copy = readWorkbook(desk.state.shared?.bytes ?? new Uint8Array(), ids);
    const edited = saveWorkbook(copy, [{ sheet: 'Seat', row: 0, column: 1, value: 200 }]);
    await desk.restore(fileOf(edited, 'seat native.xlsx'));
    const { returned, problem } = desk.state;
    expect(problem).toBeUndefined();
    expect(returned).toMatchObject({
      fileName: 'seat native back.xlsx',
      restored: 1,
      changed: [{ sheet: 'Seat', cell: 'B1', before: '100', now: '200' }],
    });
    const back = readWorkbook(returned?.bytes ?? new Uint8Array(), ids);
    expect(cell(back, 'B3')?.formula).toBe('MOLD.SEAT.FORCE(B1,B2,0.15)');
    expect(cell(back, 'B3')?.value).toBeCloseTo(845.362, 3);
  });

  it('may be the open workbook itself', async () => {
    const desk = new ShareDesk(files);
    await desk.share();
    open = readWorkbook(desk.state.shared?.bytes ?? new Uint8Array(), ids);
    await desk.restore();
    expect(desk.state.returned).toMatchObject({ fileName: 'seat back.xlsx', restored: 1, changed: [] });
  });

  it('is refused by name where it is no shared copy, or no workbook', async () => {
    const desk = new ShareDesk(files);
    await desk.restore(fileOf(saveWorkbook(open, []), 'other.xlsx'));
    expect(desk.state.problem).toContain('other.xlsx carries no MOLD formulas');
    await desk.restore(fileOf(new Uint8Array([1, 2, 3]), 'broken.xlsx'));
    expect(desk.state.problem).toBeTruthy();
    expect(desk.state.returned).toBeUndefined();
  });
});

describe('the check of a workbook', () => {
  const reportOf = async (workbook: Workbook) => {
    const desk = new CheckDesk(files);
    await desk.look(workbook);
    const { report, fileName, problem } = desk.state;
    if (!report) throw new Error(problem);
    return { report, fileName };
  };

  it('finds results that are not as the file holds them', async () => {
    const { report, fileName } = await reportOf(seat({ seat: 400 }));
    expect(fileName).toBe('seat.xlsx');
    expect(report.changed.map(({ cell: at, before }) => [at, before])).toEqual([['B3', 400]]);
    expect(alarm(report)).toMatch(/^1 result differs from the stored one/);
  });

  it('is quiet where all is as stored, whatever the cautions', async () => {
    const { report } = await reportOf(open);
    expect(alarm(report)).toBe('');
    expect(alarm({ ...report, cautions: [{ sheet: 'Seat', cell: 'B3', says: 'Stored energy.' }] })).toBe('');
  });

  it('counts functions that there are not', async () => {
    const { report } = await reportOf(
      newWorkbook({ sheets: [{ name: 'Seat', cells: { A1: { formula: 'MOLD.SEAT.FORSE(1)', value: 1 } } }] }),
    );
    expect(alarm(report)).toContain('1 unknown function');
  });

  it('forgets a report that a later file has overtaken', async () => {
    const desk = new CheckDesk(files);
    const first = desk.look(seat({ seat: 400 }));
    await Promise.all([first, desk.look(open)]);
    expect(desk.state.report?.changed).toEqual([]);
  });

  it('says why it failed', async () => {
    const desk = new CheckDesk({ ...files, read: () => Promise.reject(new Error('Excel is busy.')) });
    await desk.look();
    expect(desk.state).toMatchObject({ busy: false, problem: 'Excel is busy.' });
  });
});

it('names a copy after its file, whatever its ending', () => {
  expect(renamed('seat.xlsm', 'native')).toBe('seat native.xlsm');
  expect(renamed('seat v1.2', 'values')).toBe('seat v1.2 values.xlsx');
  expect(renamed('seat', 'values')).toBe('seat values.xlsx');
});
