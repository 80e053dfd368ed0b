import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { cellAddress } from '../../src/cells/address';
import { CellError } from '../../src/cells/value';
import { newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';
import type { CellChange } from '../../src/package/changes';
import type { WorkbookDescription } from '../../src/package/description';
import type { Workbook } from '../../src/package/model';
import { shareWorkbook, type ShareResult } from '../../src/share';
import { MOVED } from '../../src/share/convert';
import { shownText } from '../../src/render/shownText';
import { recalculate } from '../../src/workbook/recalculate';
import { hasOffice, printedByOffice } from './office';

const NAME = 'How it is calculated';

type Cells = WorkbookDescription['sheets'][number]['cells'];

async function shared(
  cells: Cells,
  others: readonly string[] = [],
): Promise<ShareResult & { copy: Workbook }> {
  const sheets = [{ name: 'Seat', cells }, ...others.map((name) => ({ name, cells: {} }))];
  const workbook = newWorkbook({ sheets });
  const results = await recalculate(workbook, worksheetFunctions);
  const ids = worksheetFunctions.map(({ id }) => id);
  const calculated = readWorkbook(saveWorkbook(workbook, results), ids);
  const result = await shareWorkbook(calculated, worksheetFunctions, { as: 'native' });
  return { ...result, copy: readWorkbook(result.bytes, ids) };
}

interface Line {
  readonly name: string;
  readonly symbol: string;
  readonly equation: string;
  readonly values: readonly unknown[];
  readonly formulas: readonly string[];
}

/** The lines of the sheet of the working, with all that stands beside the equation. */
function linesOf(copy: Workbook, name = NAME): Line[] {
  const cells = copy.sheets.find((one) => one.name === name)?.cells ?? [];
  return [...new Set(cells.map(({ row }) => row))].map((row) => {
    const own = cells.filter((cell) => cell.row === row);
    const text = (column: number): string => String(own.find((cell) => cell.column === column)?.value ?? '');
    const rest = own.filter(({ column }) => column > 2);
    return {
      name: text(0),
      symbol: text(1),
      equation: text(2),
      values: rest.map(({ value }) => (value instanceof CellError ? value.code : value)),
      formulas: rest.flatMap(({ formula }) => formula ?? []),
    };
  });
}

const force = {
  B1: 100,
  B2: 10,
  B3: 0.15,
  B4: 'in',
  B6: { formula: 'MOLD.SEAT.FORCE(B1,B2,B3,B4)' },
};

describe('the sheet of the working', () => {
  let copy: Workbook;
  beforeAll(async () => {
    ({ copy } = await shared(force));
  });

  it('has inputs in SI, steps in symbols, checks and the result in the unit of the cell, in this order', () => {
    const lines = linesOf(copy);
    const at = (wanted: (line: Line) => boolean): number => lines.findIndex(wanted);
    const push = at(({ symbol }) => symbol === 'F');
    const check = at(({ equation }) => equation === 'else refused: push: a number');
    const step = at(({ equation }) => equation.startsWith('N = F/'));
    const result = at(({ name }) => name.startsWith('Result'));
    expect([push, step, check, result]).toEqual([push, step, check, result].sort((a, b) => a - b));
    expect(lines[push]).toMatchObject({
      equation: 'Seat!B1 [lbf or N]',
      values: [expect.closeTo(444.822, 3), 'N'],
    });
    expect(lines[check]?.values).toEqual([true]);
    const cell = copy.sheets[0]?.cells.find(({ row, column }) => row === 5 && column === 1);
    expect(lines[result]?.values).toEqual([cell?.value, 'lbf']);
    expect(cell?.formula).toMatch(
      /^IF\(ROW\(\)\+COLUMN\(\).*,'How it is calculated'!\$D\$\d+,VALUE\("[^"]*"\)\)$/,
    );
  });

  it('stands behind the sheets, to be seen and printed with its heads', () => {
    const sheet = copy.sheets.find(({ name }) => name === NAME);
    expect(sheet?.state).toBe('visible');
    expect(copy.sheets.indexOf(sheet as never)).toBeGreaterThan(0);
    expect(
      linesOf(copy).some(({ name, symbol }) => name === 'Seat!B6' && symbol === `=${force.B6.formula}`),
    ).toBe(true);
  });

  it('shows at the check what is refused, and the cell is an error', async () => {
    const changed = readWorkbook(
      saveWorkbook(copy, [{ sheet: 'Seat', row: 0, column: 1, value: 'much' }]),
      [],
    );
    const results = await recalculate(changed, [], { anew: true });
    const found = (sheet: string, cell: string): unknown => {
      const own = results.find(
        (one) => one.sheet === sheet && cellAddress(one.row, one.column) === cell,
      )?.value;
      return own instanceof CellError ? own.code : own;
    };
    const lines = copy.sheets.find(({ name }) => name === NAME)?.cells ?? [];
    const check = lines.find(({ value }) => value === 'else refused: push: a number');
    expect(found('Seat', 'B6')).toBe('#VALUE!');
    expect(found(NAME, `D${(check?.row ?? 0) + 1}`)).toBe('#VALUE!');
  });
});

describe('lines of several cells', () => {
  it('stand side by side, a column for each cell of a range or of a formula that was filled down', async () => {
    const { copy } = await shared({
      A1: 5,
      A2: 10,
      A3: 15,
      B1: { formula: 'MOLD.SEAT.FORCE(100,A1:A3,0.15)', fills: 'B1:B3' },
      C1: { formula: 'MOLD.SEAT.FREEDRAFT(A1/100)' },
      C2: { formula: 'MOLD.SEAT.FREEDRAFT(A2/100)' },
    });
    const results = linesOf(copy).filter(({ name }) => name.startsWith('Result'));
    expect(results.map(({ formulas }) => formulas.length)).toEqual([3, 2]);
    expect(linesOf(copy).map(({ name }) => name)).toEqual(
      expect.arrayContaining(['Seat!B1 to B3', 'Seat!C1 to C2']),
    );
  });

  it('are left out for more than 50 cells, and the report says so', async () => {
    const cells: Record<string, number | { formula: string; fills?: string }> = {};
    for (let row = 1; row <= 51; row++) cells[`A${row}`] = row / 2;
    cells['B1'] = { formula: 'MOLD.SEAT.FORCE(100,A1:A51,0.15)', fills: 'B1:B51' };
    const { copy, cells: told } = await shared(cells);
    expect(told[0]?.why).toContain('more than 50 cells');
    expect(copy.sheets.map(({ name }) => name)).not.toContain(NAME);
    expect(copy.sheets[0]?.cells.find(({ row, column }) => row === 50 && column === 1)?.formula).toContain(
      'A51',
    );
  });

  it('say in which case they count where a cell decides between equations', async () => {
    const { copy } = await shared({
      B1: 500,
      C1: 0.001,
      B2: { formula: 'MOLD.SEAT.SINK(B1,5,0.15,0.4,0.5,1.25,"P20","P20",C1,C2)' },
    });
    const questions = linesOf(copy).filter(({ name }) => name === 'Is it this case?');
    expect(questions.map(({ values }) => values[0]).filter((one) => one === true)).toHaveLength(1);
    expect(questions.find(({ values }) => values[0] === true)?.equation).toBe(
      'stop gap given, stop stiffness left out',
    );
  });
});

const SINK = 'B1,5,0.15,0.4,0.5,1.25,"P20","7075-T6",,,"in"';

describe('lines that several cells ask for', () => {
  const sink = `"SEAT.SINK",${SINK}`;
  const lines = async (cells: Cells): Promise<Line[]> => linesOf((await shared({ B1: 500, ...cells })).copy);
  const result = { B2: { formula: `MOLD.SEAT.SINK(${SINK})` } };

  it('stand once where two cells ask for the same', async () => {
    const once = await lines(result);
    const twice = await lines({ ...result, B3: result.B2, B4: { formula: `2*${result.B2.formula}` } });
    expect(twice).toHaveLength(once.length);
  });

  it('stand with the result that a verdict judges, which says where', async () => {
    const verdict = { B3: { formula: `MOLD.SHOW.MARGIN(${sink})` } };
    const [own, both, alone] = [
      await lines(result),
      await lines({ ...result, ...verdict }),
      await lines(verdict),
    ];
    expect(both.length - own.length).toBeLessThan(alone.length / 2);
    expect(both.some(({ name }) => name.endsWith('Its inputs and other lines stand at Seat!B2.'))).toBe(true);
    expect(both.map(({ name }) => name)).toContain('Seat!B3');
  });

  it('follow their inputs at every cell that reads them', async () => {
    const cells = { B1: 500, ...result, B3: { formula: `MOLD.SHOW.MARGIN(${sink})` }, B4: result.B2 };
    const values = async (workbook: Workbook, functions: typeof worksheetFunctions): Promise<unknown[]> => {
      const put = { sheet: 'Seat', row: 0, column: 1, value: 800 };
      const ids = functions.map(({ id }) => id);
      const changed = readWorkbook(saveWorkbook(workbook, [put]), ids);
      const found = await recalculate(changed, functions, { anew: true });
      return found.filter(({ sheet }) => sheet === 'Seat').map(({ value }) => value);
    };
    const wanted = await values(newWorkbook({ sheets: [{ name: 'Seat', cells }] }), worksheetFunctions);
    const got = await values((await shared(cells)).copy, []);
    expect(got).toEqual(wanted.map((value) => expect.closeTo(Number(value), 9) as unknown));
    expect(got).toHaveLength(3);
  });
});

it('shows numbers in six digits and none as General, of which LibreOffice makes TRUE', async () => {
  const { copy } = await shared({ ...force, B7: { formula: 'MOLD.SEAT.FORCE(0.000001,B2,B3,B4)' } });
  const cells = copy.sheets.find(({ name }) => name === NAME)?.cells ?? [];
  const shown = cells
    .filter(({ formula, value }) => formula !== undefined && typeof value === 'number')
    .map((cell) => ({ ...cell, format: copy.styles[cell.style]?.numberFormat ?? '' }));
  expect(shown.length).toBeGreaterThan(10);
  expect(shown.filter(({ format }) => format === 'General')).toEqual([]);
  for (const { value, format } of shown) {
    const text = shownText(value, format, () => true, false).text;
    expect(Number(text.replaceAll(',', '')) / Number(value)).toBeCloseTo(1, 4);
    expect(text.length).toBeLessThanOrEqual(12);
  }
});

it('prints no wider than the first cells that stand side by side, on sheets that are upright', async () => {
  const { copy } = await shared({
    A1: 5,
    A2: 10,
    A3: 15,
    B1: { formula: 'MOLD.SEAT.FORCE(100,A1:A3,0.15)', fills: 'B1:B3' },
  });
  const names = new TextDecoder().decode(copy.parts.get('xl/workbook.xml'));
  expect(names).toMatch(/Print_Area[^>]*>'How it is calculated'!\$A\$1:\$F\$\d+</);
});

it('is not printed where it is hidden, which LibreOffice does with an area of print', async () => {
  const cells = { A1: 0.1, B1: { formula: 'MOLD.COOL.TIME(A1,0.0001,430,100,180)' } };
  const sheets = [{ name: 'Cooling', cells }];
  const { bytes } = await shareWorkbook(newWorkbook({ sheets }), worksheetFunctions, {
    as: 'native',
    oneCell: true,
  });
  const copy = readWorkbook(bytes, []);
  expect(copy.sheets.find(({ name }) => name === 'MoldSteps')?.state).toBe('hidden');
  expect(new TextDecoder().decode(copy.parts.get('xl/workbook.xml'))).not.toContain('Print_');
});

it('leads from each part back to its cell', async () => {
  const { copy } = await shared(force);
  const sheet = copy.sheets.find(({ name }) => name === NAME);
  expect(sheet?.hyperlinks).toMatchObject([{ location: 'Seat!B6' }]);
});

it('shows beside a number the formula that its author typed, also where the copy asks before it answers', async () => {
  const verdict = 'IFERROR(IF(B6>1,"holds","does not hold"),"not known")';
  const { copy } = await shared({ ...force, B7: { formula: verdict }, C7: { formula: 'FORMULATEXT(B7)' } });
  const at = (column: number): unknown =>
    copy.sheets[0]?.cells.find((cell) => cell.row === 6 && cell.column === column);
  expect(at(1)).toMatchObject({ formula: expect.stringContaining('MoldQuestions!') as unknown });
  expect(at(2)).toMatchObject({ value: `=${verdict}` });
  expect(at(2)).not.toHaveProperty('formula');
});

it('asks each question once, on a sheet that is hidden', async () => {
  const passes = (n: number): string => `IFERROR(MOLD.SEAT.FORCE(B1,B2,B3,B4),${n})`;
  const { copy } = await shared({ ...force, C1: { formula: passes(1) }, C2: { formula: passes(2) } });
  const sheet = copy.sheets.find(({ name }) => name === 'MoldQuestions');
  const formulas = sheet?.cells.flatMap(({ formula }) => formula ?? []) ?? [];
  expect(sheet?.state).toBe('hidden');
  expect(formulas.filter((text) => text.includes('Seat!B3'))).toHaveLength(1);
});

it('says so where rows are sorted or a cell is filled down, and follows rows that are put in', async () => {
  const rows = [
    [1, 50],
    [2, 70],
  ] as const;
  const { copy } = await shared(
    Object.fromEntries(
      rows.flatMap(([row, push]): [string, number | { formula: string }][] => [
        [`A${row}`, push],
        [`B${row}`, { formula: `MOLD.SEAT.FORCE(A${row},$D$1,0.15)` }],
        [`C${row}`, { formula: `B${row}*2` }],
        ['D1', 10],
      ]),
    ),
  );
  const [sheet] = copy.sheets;
  if (!sheet) throw new Error('there is no sheet');
  const formula = (row: number): string =>
    sheet.cells.find((cell) => cell.row === row && cell.column === 1)?.formula ?? '';
  const after = async (changes: CellChange[]): Promise<unknown[]> => {
    const changed = readWorkbook(saveWorkbook(copy, changes), []);
    const found = await recalculate(changed, [], { anew: true });
    return [1, 2].flatMap((column) =>
      [0, 1, 2].map((row) => {
        const value = found.find(
          (one) => one.sheet === sheet.name && one.row === row && one.column === column,
        );
        return value?.value instanceof CellError ? value.value.code : value?.value;
      }),
    );
  };
  const put = (row: number, column: number, value: number | null, own?: string): CellChange => ({
    sheet: sheet.name,
    row,
    column,
    value,
    ...(own !== undefined && { formula: own }),
  });
  const [small, large] = await after([]);
  expect(await after([put(0, 0, 70), put(1, 0, 50)])).toEqual([
    large,
    small,
    undefined,
    2 * Number(large),
    2 * Number(small),
    undefined,
  ]);
  const sorted = [put(0, 0, 70), put(1, 0, 50), put(0, 1, null, formula(1)), put(1, 1, null, formula(0))];
  expect(await after(sorted)).toEqual(['#VALUE!', '#VALUE!', undefined, '#VALUE!', '#VALUE!', undefined]);
  expect(formula(0)).toContain(`VALUE("${MOVED}")`);
  const filled = await after([put(2, 0, 90), put(2, 1, null, formula(1))]);
  expect(filled.slice(0, 3)).toEqual([small, large, '#VALUE!']);
});

it('takes a number where its name is taken', async () => {
  const { copy } = await shared(force, [NAME]);
  expect(copy.sheets.map(({ name }) => name)).toEqual(expect.arrayContaining([NAME, `${NAME}2`]));
  expect(copy.sheets[0]?.cells.at(-1)?.formula).toContain(`'${NAME}2'!`);
});

it.skipIf(!hasOffice)('a long working is printed by LibreOffice', async () => {
  const file = readFileSync('samples/push-out-insert.xlsx');
  const ids = worksheetFunctions.map(({ id }) => id);
  const { bytes } = await shareWorkbook(readWorkbook(file, ids), worksheetFunctions, {
    as: 'native',
    basis: true,
  });
  expect(Buffer.from(printedByOffice(bytes)).toString('latin1', 0, 4)).toBe('%PDF');
});
