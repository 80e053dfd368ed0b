import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { areaContains, parseCell } from '../../src/cells/address';
import { CellError, type CellValue } from '../../src/cells/value';
import { readWorkbook, saveWorkbook } from '../../src/package';
import { newWorkbook } from '../../src/package/author';
import { drawingsOf } from '../../src/package/drawings/readDrawings';
import type { Workbook } from '../../src/package/model';
import { shiftFormula } from '../../src/package/shiftFormula';
import { knownFunctions } from '../../src/package/spelling';
import { changeStructure } from '../../src/package/structure';
import { Book } from '../../src/sheet/book';
import { contentOf } from '../../src/workbook/content';
import { recalculate } from '../../src/workbook/recalculate';
import { WorkbookCopy } from '../../src/whatif/copy';
import { changed, keepWhatIf, keptWhatIfs, outOfDate, planOf, runAgain } from '../../src/whatif/kept';
import { readCell, type Varied } from '../../src/whatif/plan';
import { runWhatIf } from '../../src/whatif/run';
import { SEAT_CELLS } from './seatCells';

const ids = worksheetFunctions.map(({ id }) => id);
const known = knownFunctions(ids);

/** As a program that saves it does. */
async function calculated(workbook: Workbook): Promise<Workbook> {
  return readWorkbook(saveWorkbook(workbook, await recalculate(workbook, worksheetFunctions)), ids);
}

function valueAt(workbook: Workbook, address: string): CellValue {
  const [sheetName = '', cell = ''] = address.split('!');
  const place = parseCell(cell);
  const sheet = workbook.sheets.find(({ name }) => name === sheetName);
  return sheet?.cells.find(({ row, column }) => row === place?.row && column === place.column)?.value ?? null;
}

const typed = (workbook: Workbook, address: string, value: CellValue): Promise<Workbook> => {
  const { sheet, row, column } = readCell(address, '');
  return calculated(readWorkbook(saveWorkbook(workbook, [{ sheet, row, column, value }]), ids));
};

const design = await calculated(newWorkbook({ sheets: [{ name: 'Seat', cells: SEAT_CELLS }] }));

async function kept(workbook: Workbook, vary: readonly Varied[]): Promise<Workbook> {
  const copy = new WorkbookCopy(workbook, worksheetFunctions);
  const results = ['Seat!B4', 'Seat!B5'].map((address) => readCell(address, ''));
  const outcome = await runWhatIf(copy, { vary, results });
  return calculated((await keepWhatIf(workbook, worksheetFunctions, outcome)).workbook);
}
const draft: Varied = { cell: readCell('Seat!B1', ''), values: [3, 5, 7, 9] };
const friction: Varied = { cell: readCell('Seat!B3', ''), values: [0.1, 0.15, 0.2] };
const force = (push: number, degrees: number, mu: number): number =>
  push / (Math.sin((degrees * Math.PI) / 180) + mu * Math.cos((degrees * Math.PI) / 180));

/** What the one chart of a sheet holds for programs that draw before they calculate. */
const drawnValues = (workbook: Workbook) =>
  drawingsOf(workbook, 'What if').flatMap((one) =>
    one.shows === 'chart'
      ? one.chart.plots.flatMap(({ series }) => series.map(({ values }) => values.cached))
      : [],
  );

const column = await kept(design, [draft]);
const matrix = await kept(design, [draft, friction]);

describe('a what-if written into a workbook', () => {
  it('is a labelled table with units, a chart of each number, and what was varied', () => {
    expect(valueAt(column, 'What if!A1')).toBe('What if: Draft per side, for Force on the seat and others');
    expect(['A7', 'B7', 'C7'].map((cell) => valueAt(column, `What if!${cell}`))).toEqual([
      'Draft per side (deg)',
      'Force on the seat (lbf)',
      'Seat',
    ]);
    [3, 5, 7, 9].forEach((degrees, at) => {
      expect(valueAt(column, `What if!A${at + 8}`)).toBe(degrees);
      expect(valueAt(column, `What if!B${at + 8}`)).toBeCloseTo(force(400, degrees, 0.15), 8);
    });
    expect(valueAt(column, 'What if!C8')).toBe('✗ does not hold');
    const charts = drawingsOf(column, 'What if').flatMap((one) => (one.shows === 'chart' ? [one.chart] : []));
    expect(charts).toHaveLength(1);
    expect(charts[0]?.along.title?.text).toBe('Draft per side (deg)');
    expect(charts[0]?.plots[0]?.series[0]?.values).toMatchObject({
      reference: "'What if'!$B$8:$B$11",
      cached: [3, 5, 7, 9].map((degrees) => expect.closeTo(force(400, degrees, 0.15), 8) as number),
    });
  });

  it('leaves a gap in its charts where the design refuses a value, also when it is run again', async () => {
    const refused = await kept(design, [{ ...draft, values: [-3, 5, 60, 7] }]);
    const numbers = [force(400, 5, 0.15), force(400, 7, 0.15)].map((one) => expect.closeTo(one, 8) as number);
    expect(drawnValues(refused)).toEqual([[null, numbers[0], null, numbers[1]]]);
    expect(['B8', 'B10', 'C8'].map((cell) => valueAt(refused, `What if!${cell}`))).toEqual(
      Array<CellValue>(3).fill(new CellError('#N/A')),
    );
    const [one] = keptWhatIfs(refused);
    const other = await typed(refused, 'What if!A9', 90);
    const again = one && (await runAgain(other, worksheetFunctions, one));
    const done = changed(other, worksheetFunctions, again?.changes ?? []);
    expect(valueAt(done, 'What if!B9')).toEqual(new CellError('#N/A'));
    const pairs = await kept(design, [{ ...draft, values: [5, 60] }, friction]);
    expect(drawnValues(pairs)).toEqual(
      [0.1, 0.15, 0.2].map((mu) => [expect.closeTo(force(400, 5, mu), 8) as number, null]),
    );
  });

  it('leaves a gap for a text among numbers, and keeps the texts of a result that has no numbers', async () => {
    const worded = await typed(design, 'Seat!B6', 'open');
    const book = readWorkbook(
      saveWorkbook(worded, [
        { sheet: 'Seat', row: 4, column: 1, value: null, formula: 'IF(B1<6,"too flat",B4*2)' },
      ]),
      ids,
    );
    const table = await kept(await calculated(book), [draft]);
    expect(drawnValues(table)[1]).toEqual([null, null, expect.any(Number), expect.any(Number)]);
    expect(valueAt(column, 'What if!C8')).toBe('✗ does not hold');
  });

  it('is a matrix for two inputs, colored by the verdict, with a line for each value', () => {
    expect(valueAt(matrix, 'What if!C9')).toBeCloseTo(force(400, 3, 0.15), 8);
    expect(['B8', 'C8', 'D8'].map((cell) => valueAt(matrix, `What if!${cell}`))).toEqual([0.1, 0.15, 0.2]);
    const [chart] = drawingsOf(matrix, 'What if').flatMap((one) =>
      one.shows === 'chart' ? [one.chart] : [],
    );
    expect(chart?.plots[0]?.series.map(({ name }) => name?.text)).toEqual(['0.1', '0.15', '0.2']);
    const rule = matrix.sheets[1]?.conditionalFormats.find(({ formulas }) =>
      formulas[0]?.includes('does not hold'),
    );
    expect(rule?.areas[0]).toEqual({ top: 8, left: 1, bottom: 11, right: 3 });
  });

  it('draws the limit between pairs of which one does not hold, as the calculation finds them', () => {
    const lines = matrix.sheets[1]?.conditionalFormats.filter(
      ({ style }) => Object.keys(style.borders).length > 0,
    );
    const book = new Book(contentOf(matrix), worksheetFunctions);
    book.calculate();
    const allowed = Number(SEAT_CELLS.B6);
    const [degrees, frictions] = [
      [3, 5, 7, 9],
      [0.1, 0.15, 0.2],
    ] as const;
    const holds = degrees.map((one) => frictions.map((mu) => force(400, one, mu) < allowed));
    expect(new Set(holds.flat()).size).toBe(2);
    const drawn = (side: 'right' | 'bottom', row: number, column: number): boolean =>
      (lines ?? []).some(({ areas: [area], formulas: [formula = ''], style }) => {
        if (!area || !style.borders[side] || !areaContains(area, row, column)) return false;
        const text = shiftFormula(formula, row - area.top, column - area.left);
        return book.evaluate(text, { sheet: 1, row, column })[0]?.[0] === true;
      });
    degrees.forEach((_, down) => {
      frictions.forEach((__, across) => {
        const [here, right, below] = [
          holds[down]?.[across],
          holds[down]?.[across + 1],
          holds[down + 1]?.[across],
        ];
        expect(drawn('right', 8 + down, 1 + across)).toBe(right !== undefined && right !== here);
        expect(drawn('bottom', 8 + down, 1 + across)).toBe(below !== undefined && below !== here);
      });
    });
  });

  it('stands while nothing that it rests on changes, and the varied input may', async () => {
    expect(valueAt(column, 'What if!A2')).toBe('Made for the design as it stands.');
    for (const [address, value] of [
      ['Seat!B1', 8],
      ['Seat!A9', 'Nothing depends on this'],
    ] as const) {
      const other = await typed(column, address, value);
      expect(valueAt(other, 'What if!A2')).toBe('Made for the design as it stands.');
    }
    expect(outOfDate(column)).toEqual([]);
  });

  it.each([
    ['an input', 'Seat!B2', 500],
    ['the limit of a verdict', 'Seat!B6', 1000],
    ['a formula', 'Seat!B4', 1234],
  ] as const)('says to run again when %s has changed', async (_, address, value) => {
    const other = await typed(column, address, value);
    expect(valueAt(other, 'What if!A2')).toBe('Made for other values: run again.');
    expect(outOfDate(other)).toHaveLength(1);
  });

  it('runs again with the values that stand in its table, wherever it has been moved', async () => {
    const moved = changeStructure(
      changeStructure(
        changeStructure(
          await typed(column, 'Seat!B2', 500),
          { do: 'insert', what: 'rows', sheet: 'Seat', at: 0, count: 1 },
          known,
        ),
        { do: 'insert', what: 'columns', sheet: 'What if', at: 0, count: 2 },
        known,
      ),
      { do: 'renameSheet', sheet: 'Seat', name: 'Taper seat' },
      known,
    );
    const other = await typed(moved, 'What if!C11', 15);
    const [one] = keptWhatIfs(other);
    if (!one) throw new Error('The what-if is gone.');
    expect(planOf(other, one).vary[0]).toEqual({
      cell: { sheet: 'Taper seat', row: 1, column: 1 },
      values: [3, 5, 7, 15],
    });
    const again = await runAgain(other, worksheetFunctions, one);
    const done = await calculated(changed(other, worksheetFunctions, again?.changes ?? []));
    expect(valueAt(done, 'What if!D11')).toBeCloseTo(force(500, 15, 0.15), 8);
    expect(valueAt(done, 'What if!C2')).toBe('Made for the design as it stands.');
    expect(outOfDate(done)).toEqual([]);
  });

  it('runs a matrix again', async () => {
    const other = await typed(matrix, 'Seat!B2', 800);
    const [one] = keptWhatIfs(other);
    if (!one) throw new Error('The what-if is gone.');
    const again = await runAgain(other, worksheetFunctions, one);
    const done = changed(other, worksheetFunctions, again?.changes ?? []);
    expect(valueAt(done, 'What if!D12')).toBeCloseTo(force(800, 9, 0.2), 8);
  });

  it('leaves the workbook alone when it is stopped half-way', async () => {
    const [one] = keptWhatIfs(column);
    const stop = new AbortController();
    stop.abort();
    expect(one && (await runAgain(column, worksheetFunctions, one, { signal: stop.signal }))).toBeUndefined();
  });

  it('is no what-if any more once its cells are gone', () => {
    const without = changeStructure(column, { do: 'deleteSheet', sheet: 'What if' }, known);
    expect(keptWhatIfs(without)).toEqual([]);
  });

  it('has a number and a sheet of its own beside others', async () => {
    const two = await kept(column, [friction]);
    expect(keptWhatIfs(two).map(({ number, made }) => [number, made.sheet])).toEqual([
      [1, 'What if'],
      [2, 'What if 2'],
    ]);
    expect(two.names.every(({ hidden }) => hidden)).toBe(true);
  });
});
