import { afterEach, describe, expect, it, vi } from 'vitest';
import { GridCalculation } from '../../src/page/calculation';
import { Book } from '../../src/sheet/book';
import type { BookCell } from '../../src/sheet/content';

/** Every look at the clock takes ten milliseconds, whatever the machine does. */
function slowClock(): void {
  let now = 0;
  vi.spyOn(performance, 'now').mockImplementation(() => (now += 10));
}

const column = (count: number, formula: (row: number) => string): BookCell[] =>
  Array.from({ length: count }, (_, row) => ({ row, column: 0, value: null, formula: formula(row) }));

/** Calculates the cells in slices; answers how long each was to be, and what was heard. */
async function slicesOf(cells: BookCell[]) {
  const heard: (boolean | 'calculated')[] = [];
  const calculation = new GridCalculation([], {
    calculated: () => heard.push('calculated'),
    busy: (is) => heard.push(is),
  });
  const calculate = vi.spyOn(Book.prototype, 'calculate');
  await calculation.load({
    sheets: [{ name: 'A', tables: [], rows: [], cells }],
    names: [],
    date1904: false,
  });
  return { calculation, heard, times: calculate.mock.calls.map(([limits]) => limits?.time ?? Infinity) };
}

afterEach(() => {
  vi.restoreAllMocks();
});

describe('the calculation of the page', () => {
  it('comes in short slices however much there is, and says so only where it takes long', async () => {
    slowClock();
    const few = await slicesOf(column(1_000, () => '1+1'));
    expect(few.times).toEqual([40]);
    expect(few.heard).toEqual(['calculated']);

    const many = await slicesOf(column(80_000, () => '1+1'));
    expect(many.times.length).toBeGreaterThan(8);
    expect(new Set(many.times)).toEqual(new Set([40]));
    expect(many.heard).toEqual([true, 'calculated', false]);
    expect(many.calculation.value({ sheet: 0, row: 79_999, column: 0 })).toBe(2);
  });

  it('gives one formula as long as it takes, and is short again behind it', async () => {
    slowClock();
    const long = 'REDUCE(0,SEQUENCE(15000),LAMBDA(sum,one,sum+one))';
    const { calculation, times } = await slicesOf(column(20_000, (row) => (row === 9_000 ? long : '1+1')));
    expect(Math.max(...times)).toBeGreaterThan(40);
    expect(times.at(-1)).toBe(40);
    expect(calculation.value({ sheet: 0, row: 9_000, column: 0 })).toBe((15_000 * 15_001) / 2);
  });
});
