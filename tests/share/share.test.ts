import { describe, expect, it } from 'vitest';
import { CellError } from '../../src/cells/value';
import { worksheetFunctions } from '../../src/call/functions';
import type { WorkbookDescription } from '../../src/package/description';
import { recalculate } from '../../src/workbook/recalculate';
import { cellAddress, parseCell } from '../../src/cells/address';
import { type Workbook } from '../../src/package/model';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import type { CellChange } from '../../src/package/changes';
import { callsOurs } from '../../src/package/spelling';
import { restoreWorkbook, shareWorkbook, type ShareOptions } from '../../src/share';
import { rich, unzip, zip } from '../package/packages';

const ids = worksheetFunctions.map(({ id }) => id);

/** A workbook with calculated values, as a person would have saved it. */
async function made(
  cells: WorkbookDescription['sheets'][number]['cells'],
  names?: Record<string, string>,
): Promise<Workbook> {
  const workbook = newWorkbook({ sheets: [{ name: 'Sheet', cells }], ...(names && { names }) });
  const results = await recalculate(workbook, worksheetFunctions);
  return readWorkbook(saveWorkbook(workbook, results), ids);
}

const share = async (workbook: Workbook, options: Partial<ShareOptions> = {}) => {
  const result = await shareWorkbook(workbook, worksheetFunctions, { as: 'native', ...options });
  return { ...result, copy: readWorkbook(result.bytes, ids) };
};

const at = (workbook: Workbook, address: string, sheet = 'Sheet') => {
  const place = parseCell(address);
  return workbook.sheets
    .find(({ name }) => name === sheet)
    ?.cells.find(({ row, column }) => row === place?.row && column === place.column);
};

/** What a cell gives without our functions once others hold something else. */
async function after(
  copy: Workbook,
  edits: Readonly<Record<string, number | string>>,
  address: string,
): Promise<unknown> {
  const changes = Object.entries(edits).map(([cell, value]): CellChange => ({
    sheet: 'Sheet',
    value,
    ...(parseCell(cell) ?? { row: 0, column: 0 }),
  }));
  const results = await recalculate(readWorkbook(saveWorkbook(copy, changes), ids), [], { anew: true });
  const found = results.find((one) => one.sheet === 'Sheet' && cellAddress(one.row, one.column) === address);
  return found?.value instanceof CellError ? found.value.code : found?.value;
}

const force = { B1: 100, B2: 10, B3: 0.15, B4: 'in', B6: { formula: 'MOLD.SEAT.FORCE(B1,B2,B3,B4)' } };

const SHAPES = [
  ['line by line', {}],
  ['in one cell', { oneCell: true }],
] as const;

describe.each(SHAPES)('a native copy %s', (_shape, shape) => {
  const copied = (workbook: Workbook) => share(workbook, shape);

  it('follows its inputs and the choice of units', async () => {
    const { copy } = await copied(await made(force));
    expect(at(copy, 'B6')?.formula).not.toMatch(/MOLD\./);
    // By hand: 200/(sin 20° + 0.15 cos 20°); the force does not depend on its unit.
    const wanted = 200 / (Math.sin(Math.PI / 9) + 0.15 * Math.cos(Math.PI / 9));
    expect(await after(copy, { B1: 200, B2: 20 }, 'B6')).toBeCloseTo(wanted, 9);
    expect(await after(copy, { B1: 200, B2: 20, B4: 'mm' }, 'B6')).toBeCloseTo(wanted, 9);
  });

  it.each([
    ['a draft of 0', { B2: 0 }],
    ['a negative push', { B1: -1 }],
    ['text for a number', { B2: 'steep' }],
    ['a unit system that there is not', { B4: 'cm' }],
  ])('refuses %s with #VALUE!', async (_, edit) => {
    const { copy } = await copied(await made(force));
    expect(await after(copy, edit, 'B6')).toBe('#VALUE!');
  });

  it('reads units that come early as the functions do', async () => {
    const workbook = await made({
      B1: 12,
      B4: ' MM',
      C1: { formula: 'MOLD.TAP.DRILL("M6","mm")' },
      C2: { formula: 'MOLD.SPRING.PRELOAD(B1,1.5,1,B4)' },
      C3: { formula: 'MOLD.SPRING.PRELOAD(B1,{1.5;2},1,"mm")', fills: 'C3:C4' },
      D1: { formula: 'MOLD.STACK.RSS(B1:B3,"mm")' },
    });
    expect(at(workbook, 'C2')?.value).toBe(6);
    const { copy } = await copied(workbook);
    for (const cell of ['C1', 'C2', 'C3', 'C4', 'D1']) {
      expect(at(copy, cell)?.formula, cell).not.toMatch(/MOLD\./);
      expect(at(copy, cell)?.value, cell).toBeCloseTo(Number(at(workbook, cell)?.value), 12);
    }
    expect(at(copy, 'C1')?.value).toBe(5);
    expect(await after(copy, { B1: 24 }, 'C2')).toBeCloseTo(12, 9);
    expect(await after(copy, { B4: 'cm' }, 'C2')).toBe('#VALUE!');
  });

  it('reads plain numbers typed in a formula in the units of a cell, whatever these become', async () => {
    const cells = {
      B1: 2,
      B4: 'mm',
      C1: { formula: 'MOLD.SEAT.CLEAR(10,B1,B4)' },
      C2: { formula: 'MOLD.STACK.WORST({1;2},B4)+0*B1' },
      C3: { formula: 'MOLD.SEAT.SINK(2000,5,0.15,10,12,25,205000,"P20",B4)' },
      C4: { formula: 'MOLD.COOL.RISE(10,200,2,0.46,B4)' },
      C5: { formula: 'MOLD.STACK.WORST({1;"2 mm"},B4)+0*B1' },
    };
    const workbook = await made(cells);
    const { copy } = await copied(workbook);
    const inInches = { B4: 'in' };
    const wanted = await made({ ...cells, ...inInches });
    for (const cell of ['C1', 'C2', 'C4', 'C5']) {
      expect(at(copy, cell)?.formula, cell).not.toMatch(/MOLD\./);
      expect(await after(copy, inInches, cell), cell).toBeCloseTo(Number(at(wanted, cell)?.value), 9);
    }
    // As pounds per square inch no metal is as soft.
    expect(await after(copy, inInches, 'C3')).toBe(at(wanted, 'C3')?.value);
  });

  it('looks names up in a table of the rows in use, and is #N/A for another', async () => {
    const workbook = await made({
      A1: 'P20',
      A2: '6061-T6',
      B1: { formula: 'MOLD.HEAT.GROWTH(4,A1,60)' },
      B2: { formula: 'MOLD.HEAT.GROWTH(4,A2,60)' },
    });
    const { copy, cells } = await copied(workbook);
    expect(cells.map(({ how }) => how)).toEqual(['looked up', 'looked up']);
    const tables = copy.sheets.find(({ name }) => name === 'MoldTables');
    expect(tables?.state).toBe('hidden');
    expect(tables?.cells.map(({ value }) => value)).toEqual(expect.arrayContaining(['P20', '6061-T6']));
    expect(await after(copy, { A1: '6061-T6' }, 'B1')).toBeCloseTo(Number(at(workbook, 'B2')?.value), 12);
    expect(await after(copy, { A1: 'unobtainium' }, 'B1')).toBe('#N/A');
  });

  it('reads text with units, and takes numbers and other amounts in its place', async () => {
    const workbook = await made({ ...force, B1: '1 kN', B4: 'mm' });
    const { copy } = await copied(workbook);
    const forceOf = async (push: string): Promise<unknown> =>
      at(await made({ ...force, B1: push, B4: 'mm' }), 'B6')?.value;
    expect(at(copy, 'B6')?.value).toBeCloseTo(Number(at(workbook, 'B6')?.value), 9);
    expect(await after(copy, { B1: 1000 }, 'B6')).toBeCloseTo(Number(at(workbook, 'B6')?.value), 9);
    for (const push of ['2 kN', '0.25 KN', '450 lbf', '3/4 kN'])
      expect(await after(copy, { B1: push }, 'B6')).toBeCloseTo(Number(await forceOf(push)), 9);
    // What a worksheet reads otherwise than the function, or would take for a date, is refused.
    for (const push of [
      '1,5 kN',
      '1.5/3 kN',
      '1/-2 kN',
      '2025/1/2 kN',
      '12:30 kN',
      '5% kN',
      '1  kN',
      '5 mm',
      'k*',
    ])
      expect(await after(copy, { B1: push }, 'B6'), push).toBe('#VALUE!');
  });

  it('reads text with a unit where it takes a name or a number', async () => {
    const cells = (metal: string | number): Record<string, string | number | { formula: string }> => ({
      A1: 10,
      A2: metal,
      A3: { formula: 'MOLD.HEAT.GROWTH(A1,A2,50,"mm")' },
    });
    const { copy } = await copied(await made(cells('P20')));
    for (const metal of ['12e-6 1/°C', '0.0001 1/°C', '6061-T6', 0.00002]) {
      const wanted: unknown = at(await made(cells(metal)), 'A3')?.value;
      const got: unknown = await after(copy, { A2: metal }, 'A3');
      // A text that a worksheet does not read the same may be refused, never taken for something else.
      if (typeof got === 'number') expect(got).toBeCloseTo(Number(wanted), 12);
      else expect(metal).toBe('12e-6 1/°C');
    }
  });

  it('gives every cell of a spill a formula of its own, and ranges for what reads the spill', async () => {
    const workbook = await made({
      A1: 5,
      A2: 10,
      A3: 15,
      B1: { formula: 'MOLD.SEAT.FORCE(100,A1:A3,0.15)', fills: 'B1:B3' },
      D1: { formula: 'SUM(ANCHORARRAY(B1))' },
    });
    const { copy } = await copied(workbook);
    const formulas = ['B1', 'B2', 'B3'].map((cell) => at(copy, cell)?.formula ?? '');
    expect(new Set(formulas).size).toBe(3);
    expect(formulas.join()).not.toContain('MOLD.');
    expect(at(copy, 'D1')?.formula).toBe('SUM(B1:B3)');
    expect(await after(copy, { A2: 5 }, 'B2')).toBeCloseTo(Number(at(workbook, 'B1')?.value), 9);
  });

  it('writes calls inside formulas, of names and of other calls', async () => {
    const workbook = await made(
      {
        B1: 100,
        B2: 10,
        C1: { formula: 'IF(B1>50,2*MOLD.SEAT.FORCE(push,B2,MOLD.SEAT.FREEDRAFT(0.15)/50),0)' },
        C2: { formula: 'SUM(MOLD.SEAT.FORCE(push,{5,10},0.15))' },
      },
      { push: 'Sheet!$B$1' },
    );
    const { copy, cells } = await copied(workbook);
    expect(cells.map(({ how }) => how)).toEqual(['native', 'native']);
    const both = (await after(copy, { B1: 200 }, 'C2')) as number;
    expect(both).toBeCloseTo(2 * Number(at(workbook, 'C2')?.value), 8);
  });

  describe('of what no formula gives', () => {
    const sheet = {
      A1: 0.01,
      A2: 0.02,
      B1: { formula: 'MOLD.STACK.TRIALS(A1:A2)', fills: 'B1:F1' },
      B3: { formula: 'B1*2' },
      B4: { formula: 'IF(B3<1,"in range","too wide")' },
      B5: { formula: 'A1*2' },
    };

    it('holds the value, looks like nothing that is filled in, and says why', async () => {
      const { copy, cells } = await copied(await made(sheet));
      expect(cells[0]).toMatchObject({ cell: 'B1', how: 'frozen' });
      expect(copy.styles[at(copy, 'F1')?.style ?? 0]?.fill).toBe('#DDD9E6');
      expect(copy.sheets[0]?.notes[0]?.text).toContain('MOLD.STACK.TRIALS(A1:A2)');
    });

    it('gives no value and no verdict once an input is another one', async () => {
      const { copy } = await copied(await made(sheet));
      const values = async (A1: CellChange['value']): Promise<unknown[]> => {
        const change = { sheet: 'Sheet', row: 0, column: 0, value: A1 };
        const changed = readWorkbook(saveWorkbook(copy, [change]), []);
        const found = await recalculate(changed, [], { anew: true });
        return ['B1', 'F1', 'B3', 'B4', 'B5'].map(
          (cell) =>
            found.find((one) => one.sheet === 'Sheet' && cellAddress(one.row, one.column) === cell)?.value,
        );
      };
      expect(await values(0.01)).toEqual([
        expect.any(Number),
        expect.any(Number),
        expect.any(Number),
        'in range',
        0.02,
      ]);
      const says = 'made for other inputs: ask for a new copy';
      expect(await values(0.015)).toEqual([says, says, says, says, 0.03]);
      expect((await values(null)).slice(0, 4)).toEqual([says, says, says, says]);
      expect((await values(true)).slice(0, 4)).toEqual([says, says, says, says]);
    });
  });

  it('holds frozen values by all that they read, be it named by a text or by a whole column', async () => {
    const workbook = await made(
      {
        A1: 0.01,
        A2: 0.02,
        B1: { formula: 'MOLD.STACK.TRIALS(A:A)', fills: 'B1:F1' },
        B2: { formula: 'MOLD.STACK.TRIALS(INDIRECT("A1:A2"))', fills: 'B2:F2' },
        B4: { formula: 'MOLD.SEAT.FORCE(100,10,mu)' },
      },
      { mu: '0.15' },
    );
    const { copy, cells } = await copied(workbook);
    expect(cells.filter(({ why }) => why.includes('cannot be watched'))).toEqual([]);
    const says = 'made for other inputs: ask for a new copy';
    for (const cell of ['B1', 'B2']) {
      expect(await after(copy, { A2: 0.02 }, cell)).toBe(at(workbook, cell)?.value);
      expect(await after(copy, { A2: 0.03 }, cell)).toBe(says);
    }
    expect(await after(copy, { A9: 0.02 }, 'B1')).toBe(says);
    // A name for a number reads no cell, so it rests on none.
    expect(await after(copy, { A2: 0.03 }, 'B4')).toBeCloseTo(Number(at(workbook, 'B4')?.value), 9);
  });

  it('says that it cannot tell, where a formula would pass over an entry that the copy alone refuses', async () => {
    const call = 'MOLD.SEAT.FORCE(B1,B2,B3,B4)';
    const workbook = await made({
      ...force,
      B7: { formula: `IFERROR(${call},-1)` },
      B8: { formula: 'B7*2' },
      C1: { formula: 'COUNT(B6:B7)' },
      C2: { formula: 'IF(ISERROR(B6),"none","some")' },
    });
    const { copy } = await copied(workbook);
    const says = 'made for other inputs: ask for a new copy';
    // The function reads the exponent; the copy does not.
    const text = { B1: '1e3 lbf' };
    expect(await after(copy, text, 'B6')).toBe('#VALUE!');
    // What is read by others is an error, which no sum leaves out and no limit is compared with.
    expect(await after(copy, text, 'B7')).toBe('#VALUE!');
    expect(await after(copy, text, 'B8')).toBe('#VALUE!');
    expect(await after(copy, text, 'C1')).toBe(says);
    expect(await after(copy, text, 'C2')).toBe(says);
    // What the function itself refuses is passed over as in the original.
    const steep = { B2: 0, B4: 'mm' };
    expect(await after(copy, steep, 'B7')).toBe(-1);
    expect(await after(copy, steep, 'C1')).toBe(1);
    expect(await after(copy, steep, 'C2')).toBe('none');
    const more = { B1: 200 };
    expect(await after(copy, more, 'B7')).toBeCloseTo(2 * Number(at(workbook, 'B6')?.value), 9);
    expect(await after(copy, more, 'C1')).toBe(2);
  });

  it('refuses what comes into a blank cell of a list with texts in it', async () => {
    const workbook = await made({ B1: '5 mm', B2: 1, C1: { formula: 'MOLD.STACK.WORST(B1:B3,"in")' } });
    const { copy } = await copied(workbook);
    expect(await after(copy, { B2: 2 }, 'C1')).toBeCloseTo(Number(at(workbook, 'C1')?.value) + 1, 9);
    expect(await after(copy, { B3: 2 }, 'C1')).toBe('#VALUE!');
  });

  it('refuses a blank amid a list of rows and columns, and a constant beyond its limits', async () => {
    const workbook = await made({
      A1: 1,
      B1: 2,
      A2: 3,
      B2: 4,
      C1: { formula: 'MOLD.STACK.WORST(A1:B2)' },
      C2: { formula: 'MOLD.SEAT.FORCE(100,0,0.15)' },
    });
    const { copy, cells } = await copied(workbook);
    expect(cells.map(({ how }) => how)).toEqual(['native', 'native']);
    const changed = { sheet: 'Sheet', row: 0, column: 1, value: null };
    const found = await recalculate(readWorkbook(saveWorkbook(copy, [changed]), ids), [], { anew: true });
    const value = (cell: string) =>
      found.find((one) => one.sheet === 'Sheet' && cellAddress(one.row, one.column) === cell)?.value;
    for (const cell of ['C1', 'C2']) expect(value(cell)).toMatchObject({ code: '#VALUE!' });
  });

  it('says what stays ours: a function that there is not', async () => {
    const { cells } = await copied(await made({ A1: { formula: 'MOLD.NO.SUCH(1)' } }));
    expect(cells[0]).toMatchObject({
      how: 'frozen',
      why: expect.stringContaining('there is no function MOLD.NO') as unknown,
    });
  });
});

describe('a native copy with formulas in one cell', () => {
  it('puts long working on a hidden sheet, one value a row', async () => {
    const workbook = await made({
      A1: 0.1,
      B1: { formula: 'MOLD.COOL.TIME(A1,0.0001,430,100,180)' },
    });
    const { copy } = await share(workbook, { oneCell: true });
    expect(copy.sheets.find(({ name }) => name === 'MoldSteps')?.state).toBe('hidden');
    expect(at(copy, 'B1')?.formula).toContain('MoldSteps!');
    expect(await after(copy, { A1: 0.2 }, 'B1')).toBeCloseTo(4 * Number(at(workbook, 'B1')?.value), 9);
    const { copy: withLet } = await share(workbook, { let: true });
    expect(at(withLet, 'B1')?.formula).toMatch(/^LET\(/);
    expect(withLet.sheets.map(({ name }) => name)).not.toContain('MoldSteps');
  });
});

describe('a copy of values', () => {
  it('has no formula, and tells each in a note with unit and source', async () => {
    const workbook = await made({ ...force, C6: { formula: 'B6*2' } });
    const { copy } = await share(workbook, { as: 'values' });
    // What holds the places of the originals stands on a sheet of its own.
    const shown = copy.sheets.filter(({ state }) => state === 'visible').flatMap(({ cells }) => cells);
    expect(shown.filter(({ formula }) => formula !== undefined)).toEqual([]);
    expect(at(copy, 'B6')?.value).toBe(at(workbook, 'B6')?.value);
    const [own, plain] = copy.sheets[0]?.notes ?? [];
    expect(own?.text).toMatch(/=MOLD\.SEAT\.FORCE\(B1,B2,B3,B4\)[\s\S]*Unit: lbf[\s\S]*Source: /);
    expect(plain?.text).toBe('=B6*2');
  });
});

describe('a copy of values in which a cell is in error', () => {
  it('says so in its note, with the reason', async () => {
    const workbook = await made({ ...force, B2: 0, C6: { formula: 'B6*2' } });
    const [own, plain] = (await share(workbook, { as: 'values' })).copy.sheets[0]?.notes ?? [];
    expect(own?.text).toMatch(/=MOLD\.SEAT\.FORCE[\s\S]*In error when shared: #VALUE!, draft[\s\S]*Source: /);
    expect(plain?.text).toMatch(/^=B6\*2\nIn error when shared: #VALUE!/);
  });
});

describe('the basis sheet', () => {
  const basisOf = (copy: Workbook) => copy.sheets.find(({ name }) => name === 'Basis');
  const wordsOf = (copy: Workbook): string[] => basisOf(copy)?.cells.map(({ value }) => String(value)) ?? [];

  it('tells equation, kind of source, cautions, symbols, inputs and cells, with title and version on every page', async () => {
    const { copy, bytes } = await share(await made({ ...force, B2: 5 }), { basis: true, date: '2026-01-02' });
    const words = wordsOf(copy).join('\n');
    for (const wanted of [
      'basis 2',
      '2026-01-02',
      'Sheet!B6',
      'push = 100 lbf',
      'friction = 0.15',
      'N = F/',
      'Self-locking',
      '[1] Derived: ',
      'α = Draft',
      'Formulas: 1 worked out in the copy.',
    ])
      expect(words).toContain(wanted);
    const parts = Object.entries(unzip(bytes)).map(
      ([name, part]) => [name, new TextDecoder().decode(part)] as const,
    );
    const sheet = parts.find(
      ([name, xml]) => name.startsWith('xl/worksheets/') && xml.includes('What these numbers'),
    );
    expect(sheet?.[1]).toMatch(/fitToWidth="1" fitToHeight="0" orientation="landscape"/);
    expect(parts.find(([name]) => name === 'xl/workbook.xml')?.[1]).toMatch(
      /Print_Titles[^>]*>'?Basis'?!\$1:\$2</,
    );
  });

  it('tells each function and each caution once, and lists what is frozen', async () => {
    const workbook = await made({
      ...force,
      B2: 5,
      B7: { formula: 'MOLD.SEAT.FORCE(2*B1,B2,B3,B4)' },
      B8: { formula: 'MOLD.SHOW.CAUTION("SEAT.FORCE",B1,B2,B3,B4)' },
    });
    const { copy } = await share(workbook, { basis: true });
    const words = wordsOf(copy);
    expect(words.filter((text) => text.startsWith('MOLD.SEAT.FORCE'))).toHaveLength(1);
    expect(words.filter((text) => text.startsWith('Self-locking'))).toEqual([
      expect.stringContaining('(Sheet!B6, B7)') as unknown,
    ]);
    expect(words).toContain('Sheet!B8');
  });
});

describe('a copy that comes back', () => {
  it('has its formulas again, and nothing that sharing added', async () => {
    const workbook = await made({
      ...force,
      C6: { formula: 'MOLD.SEAT.SINK(B1,B2,B3,0.4,0.5,1,"P20","P20",,,B4)' },
    });
    const { copy } = await share(workbook, { basis: true });
    const back = await restoreWorkbook(copy, worksheetFunctions);
    expect(back).toMatchObject({ restored: 2, changed: [] });
    const again = readWorkbook(back?.bytes ?? new Uint8Array(), ids);
    expect(again.sheets.map(({ name }) => name)).toEqual(['Sheet']);
    for (const cell of ['B6', 'C6']) {
      expect(at(again, cell)?.formula).toBe(at(workbook, cell)?.formula);
      expect(at(again, cell)?.value).toBeCloseTo(Number(at(workbook, cell)?.value), 9);
    }
    // With the basis of the numbers, as every workbook that is saved.
    const parts = [...workbook.parts.keys(), 'docProps/custom.xml'];
    expect([...again.parts.keys()].sort()).toEqual(parts.sort());
  });

  it('spills again, and says which cells the colleague changed', async () => {
    const workbook = await made({
      A1: 5,
      A2: 10,
      B1: { formula: 'MOLD.SEAT.FORCE(100,A1:A2,0.15)', fills: 'B1:B2' },
      C1: { formula: 'MOLD.SEAT.FREEDRAFT(0.2)' },
    });
    const { copy } = await share(workbook);
    const edited = saveWorkbook(copy, [
      { sheet: 'Sheet', row: 0, column: 0, value: 7 },
      { sheet: 'Sheet', row: 0, column: 2, value: 12 },
      { sheet: 'Sheet', row: 8, column: 0, value: 'why so much?' },
    ]);
    const back = await restoreWorkbook(readWorkbook(edited, ids), worksheetFunctions);
    expect(back?.changed).toEqual([
      { sheet: 'Sheet', cell: 'A1', before: '5', now: '7' },
      {
        sheet: 'Sheet',
        cell: 'C1',
        before: expect.stringMatching(/^=/) as unknown,
        now: '12',
        kept: 'MOLD.SEAT.FREEDRAFT(0.2)',
      },
      { sheet: 'Sheet', cell: 'A9', before: '', now: 'why so much?' },
    ]);
    const again = readWorkbook(back?.bytes ?? new Uint8Array(), ids);
    expect(at(again, 'B1')).toMatchObject({
      formula: 'MOLD.SEAT.FORCE(100,A1:A2,0.15)',
      spill: { bottom: 1 },
    });
    expect(at(again, 'B2')?.formula).toBeUndefined();
    expect(at(again, 'C1')?.value).toBe(12);
  });

  it('is told from a workbook that was never shared', async () => {
    expect(await restoreWorkbook(await made(force), worksheetFunctions)).toBeUndefined();
  });
});

describe('the rest of a package', () => {
  it('survives: charts, names, tables, rules, widths and parts that nobody knows', async () => {
    const before = rich();
    const { bytes } = await share(readWorkbook(zip(before), ids));
    const after = unzip(bytes);
    const gone = Object.keys(before).filter((name) => !(name in after));
    // The order of calculation is found anew.
    expect(gone).toEqual(['xl/calcChain.xml']);
    for (const part of [
      'odd/unknown.bin',
      'xl/charts/chart1.xml',
      'xl/tables/table1.xml',
      'xl/theme/theme1.xml',
    ])
      expect(new TextDecoder().decode(after[part])).toBe(before[part]);
    const count = (xml: string, element: string): number => xml.split(`<${element}`).length - 1;
    // The sheet of the working prints its heads on every page, and what is to be read on paper.
    const withoutOurs = (xml: string): string =>
      xml.replace(/<definedName [^>]*Print_(?:Titles|Area)[^>]*>'How it is calculated'[^<]*/g, '');
    for (const part of ['xl/worksheets/sheet1.xml', 'xl/worksheets/sheet2.xml', 'xl/workbook.xml']) {
      const [was, is] = [before[part] ?? '', new TextDecoder().decode(after[part])];
      for (const element of [
        'col ',
        'mergeCell ',
        'dataValidation ',
        'cfRule ',
        'hyperlink ',
        'definedName ',
        'sheetProtection',
      ])
        expect([part, element, count(withoutOurs(is), element)]).toEqual([
          part,
          element,
          count(was, element),
        ]);
    }
    expect(
      Object.values(readWorkbook(bytes, ids).sheets)
        .flatMap(({ cells }) => cells)
        .some(({ formula }) => formula !== undefined && callsOurs(formula)),
    ).toBe(false);
  });
});
