import { beforeEach, describe, expect, it, vi } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { ExcelHost } from '../../src/excel/host';
import { readWorkbook } from '../../src/package';
import { drawingsOf } from '../../src/package/drawings/readDrawings';
import { beginVariants } from '../../src/whatif/variants';
import { keepWhatIf } from '../../src/whatif/kept';
import { readCell, readCells } from '../../src/whatif/plan';
import { runWhatIf, type Outcome } from '../../src/whatif/run';
import { readValues } from '../../src/whatif/values';
import type { Workbook } from '../../src/package/model';
import { SEAT_CELLS } from '../whatif/seatCells';
import { installStandIn, type StandIn } from './standIn/install';
import { seenSheet } from './seenSheet';
import { StandInWorkbook } from './standIn/workbook';

let excel: StandInWorkbook;
let standIn: StandIn;
let host: ExcelHost;
const ids = worksheetFunctions.map(({ id }) => id);
const opened = (): Workbook => readWorkbook(excel.file(), ids);
const at = (address: string) => readCell(address, 'Seat');

beforeEach(async () => {
  excel = new StandInWorkbook();
  const globals: Record<string, unknown> = {};
  standIn = installStandIn(globals, (steps) => excel.execute(steps));
  for (const [name, value] of Object.entries(globals)) vi.stubGlobal(name, value);
  vi.stubGlobal('localStorage', {
    getItem: () => null,
    setItem: () => undefined,
    removeItem: () => undefined,
  });
  host = new ExcelHost();
  const seat = excel.addSheet('Seat');
  for (const [address, cell] of Object.entries(SEAT_CELLS)) {
    const { row, column } = at(address);
    seat.type(
      row,
      column,
      typeof cell === 'object' ? `=${cell.formula ?? ''}` : typeof cell === 'string' ? `'${cell}` : cell,
    );
  }
  await excel.execute([]);
});

const tried = async (vary: readonly (readonly [string, string])[], read: string): Promise<Outcome> => {
  const plan = {
    vary: vary.map(([cell, values]) => ({ cell: at(cell), values: readValues(values) })),
    results: readCells(read, 'Seat'),
  };
  const copy = await host.copy(
    plan.vary.map(({ cell }) => cell),
    plan.results,
  );
  if (!copy) throw new Error('no copy');
  return runWhatIf(copy, plan);
};

describe('a what-if that stays in Excel', () => {
  it.each([
    { what: 'of one input', vary: [['B1', '3:15:3']] as const },
    {
      what: 'of two inputs',
      vary: [
        ['B1', '3:15:3'],
        ['B3', '0.1, 0.15, 0.2'],
      ] as const,
    },
    { what: 'with values that are refused', vary: [['B1', '-3, 5, 60']] as const },
    { what: 'of words', vary: [['B7', '1.2344, "10-32", H13']] as const },
  ])('$what is what the writer of files makes of it, in one step to undo', async ({ vary }) => {
    const outcome = await tried(vary, 'B4:B5');
    const wanted = await keepWhatIf(opened(), worksheetFunctions, outcome);
    const before = excel.undos.length;
    const sheet = await host.kept.keep(outcome);
    expect(sheet).toBe(wanted.sheet);
    const made = opened();
    expect(seenSheet(made, sheet)).toEqual(seenSheet(wanted.workbook, sheet));
    const hidden = ({ names }: Workbook) =>
      names
        .filter((name) => name.hidden)
        .map(({ name, formula }) => `${name} ${formula}`)
        .sort();
    expect(hidden(made)).toEqual(hidden(wanted.workbook));
    expect(drawingsOf(made, sheet).length).toBeGreaterThan(0);
    expect(excel.undos).toHaveLength(before + 1);
    excel.undo();
    expect(await host.kept.list()).toEqual([]);
  });

  it('says when the design has changed, and runs again with the values that stand in its table', async () => {
    const outcome = await tried(
      [
        ['B1', '5, 10'],
        ['B3', '0.1, 0.2'],
      ],
      'B4',
    );
    const sheet = await host.kept.keep(outcome);
    const [one] = await host.kept.list();
    expect(one?.isOld).toBe(false);
    excel.sheet('Seat').type(1, 1, 800);
    // Another value across the top.
    excel.sheet(sheet).type(7, 2, 0.3);
    await excel.execute([]);
    const [old] = await host.kept.list();
    if (!old) throw new Error('nothing kept');
    expect(old.isOld).toBe(true);
    await host.kept.again(old.kept, {});
    expect((await host.kept.list()).map(({ isOld }) => isOld)).toEqual([false]);
    // 800/(sin 10° + 0.3 cos 10°) by hand.
    expect(excel.sheet(sheet).cells.get('9 2')?.value).toBeCloseTo(1705.4278, 3);
    expect(
      excel
        .sheet(sheet)
        .charts.all[0]?.describe()
        .series.map(({ name }) => name),
    ).toEqual(['0.1', '0.3']);
  });

  it('is run again in the workbook itself where a copy would not calculate as Excel does, and leaves it as it was', async () => {
    const sheet = await host.kept.keep(await tried([['B1', '5, 10']], 'B4'));
    // What Excel shows is not what the copy finds.
    excel.sheet('Seat').put(3, 1, { formula: 'MOLD.SEAT.FORCE(B2,B1,B3)', value: 1 });
    host.recalculate = () => excel.execute([]).then(() => undefined);
    const [one] = await host.kept.list();
    if (!one) throw new Error('nothing kept');
    const outcome = await host.kept.again(one.kept, {});
    expect(outcome?.rows).toHaveLength(2);
    expect(excel.sheet('Seat').cells.get('0 1')?.value).toBe(5);
    // 400/(sin 10° + 0.15 cos 10°) by hand.
    expect(excel.sheet(sheet).cells.get('8 1')?.value).toBeCloseTo(1244.6738, 3);
  });

  it('says in words that a sheet is protected', async () => {
    const sheet = await host.kept.keep(await tried([['B1', '5, 10']], 'B4'));
    excel.sheet(sheet).protection.protected = true;
    const [one] = await host.kept.list();
    if (!one) throw new Error('nothing kept');
    await expect(host.kept.again(one.kept, {})).rejects.toThrow('protected');
  });
});

describe('variants in Excel', () => {
  const inputs = () => readCells('B1, B3, B7', 'Seat');
  const results = () => readCells('B4:B5', 'Seat');

  it('begin with the sheet that the writer of files makes, behind the design', async () => {
    const wanted = await beginVariants(opened(), worksheetFunctions, inputs(), results());
    await host.variants.begin(inputs(), results());
    expect(seenSheet(opened(), 'Variants')).toEqual(seenSheet(wanted, 'Variants'));
    expect(excel.active.name).toBe('Sheet1');
  });

  it('are added, worked out and applied, and a missing input is named', async () => {
    await host.variants.begin(inputs(), results());
    await host.variants.add('A 5° steel');
    excel.sheet('Seat').type(0, 1, 12);
    excel.sheet('Seat').type(6, 1, "'10-32");
    await excel.execute([]);
    await host.variants.add('B 12°');
    const found = await host.variants.read();
    expect(found?.variants).toMatchObject([
      { name: 'A 5° steel', values: [5, 0.15, '1.2344'] },
      { name: 'B 12°', values: [12, 0.15, '10-32'] },
    ]);
    const sheet = excel.sheet('Variants');
    const shown = () =>
      [4, 5].map((column) => [8, 9].map((row) => sheet.cells.get(`${row} ${column}`)?.value));
    expect(shown()).toEqual([
      [expect.closeTo(1690.7246, 3), '✗ does not hold'],
      [expect.closeTo(1127.924, 3), '✓ holds'],
    ]);
    expect(await host.variants.apply('A 5° steel')).toBe('One step of undo takes it back.');
    expect(excel.sheet('Seat').cells.get('0 1')?.value).toBe(5);
    expect(excel.sheet('Seat').cells.get('6 1')?.value).toBe('1.2344');
    excel.undo();
    expect(excel.sheet('Seat').cells.get('0 1')?.value).toBe(12);
    expect(excel.sheet('Seat').cells.get('6 1')?.value).toBe('10-32');
    sheet.type(4, 5, '');
    await host.variants.again();
    expect(shown()[1]).toEqual(['missing: Draft per side', '']);
    await expect(host.variants.apply('B 12°')).rejects.toThrow('leaves out Draft per side');
  });

  it('say what the inputs held where this Excel cannot undo', async () => {
    standIn.lacks.add('ExcelApi 1.20');
    await host.variants.begin(inputs(), results());
    await host.variants.add('A');
    excel.sheet('Seat').type(0, 1, 12);
    await excel.execute([]);
    expect(await host.variants.apply('A')).toBe(
      'This Excel cannot undo what an add-in writes. Before, Seat!B1 held 12; Seat!B3 held 0.15; Seat!B7 held 1.2344.',
    );
  });
});
