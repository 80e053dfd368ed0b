import { describe, expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { parseArea } from '../../src/cells/address';
import { CellError, type CellValue } from '../../src/cells/value';
import { newDesign } from '../../src/forms/newDesign';
import { sections } from '../../src/forms/sections';
import { readWorkbook, saveWorkbook } from '../../src/package';
import type { Workbook } from '../../src/package/model';
import { recalculate } from '../../src/workbook/recalculate';

const ids = worksheetFunctions.map(({ id }) => id);
const wish = (wanted: readonly string[]) => ({
  sections: sections.filter(({ id }) => wanted.includes(id)),
  system: 'mm' as const,
});
const design = (...wanted: string[]): Promise<Workbook> =>
  newDesign({ ...wish(wanted), exampleShots: true }, worksheetFunctions);

/** The cell of a name, or one of its row. */
function placeOf(workbook: Workbook, name: string, across = 0) {
  const area = parseArea(workbook.names.find((one) => one.name === name)?.formula.split('!')[1] ?? '');
  if (!area) throw new Error(`No name ${name}`);
  return { row: area.top, column: area.left + across };
}
function valueAt(workbook: Workbook, name: string, across = 0): CellValue | undefined {
  const { row, column } = placeOf(workbook, name, across);
  return workbook.sheets[0]?.cells.find((cell) => cell.row === row && cell.column === column)?.value;
}
const [ENTRY, NOTE] = [-2, 2];

async function typed(
  workbook: Workbook,
  cells: readonly { row: number; column: number; value: CellValue }[],
) {
  const sheet = workbook.sheets[0]?.name ?? '';
  const changed = readWorkbook(
    saveWorkbook(
      workbook,
      cells.map((cell) => ({ sheet, ...cell })),
    ),
    ids,
  );
  return readWorkbook(saveWorkbook(changed, await recalculate(changed, worksheetFunctions)), ids);
}

/** Cells of the shots of a log, in the columns where they are typed. */
function shotCells(workbook: Workbook, called: string, column: number) {
  const rows = workbook.sheets[0]?.cells.filter(
    ({ column: at, value }) =>
      at === 0 && typeof value === 'string' && new RegExp(`^${called} \\d`).test(value),
  );
  return (rows ?? []).map(({ row }) => ({ row, column }));
}

const spring = await design('spring', 'shots');

describe('the shot log', () => {
  it('has the logs of the values that the design has, or all of them alone', async () => {
    const fitted = ({ names }: Workbook): string[] =>
      names.flatMap(({ name }) => /^fitted_(.*)_share$/.exec(name)?.[1] ?? []);
    expect(fitted(spring)).toEqual(['spring_rate']);
    expect(fitted(await design('seat', 'cost', 'shots'))).toEqual(['release_friction', 'diffusivity']);
    expect(fitted(await design('shots'))).toEqual(['release_friction', 'spring_rate', 'diffusivity']);
    expect(fitted(await design('press', 'shots'))).toHaveLength(3);
  });

  it('fits the line of the books to lengths and forces, and the design goes on with it', () => {
    const numbers = (column: number): number[] =>
      shotCells(spring, 'Reading', column).map(
        (place) =>
          spring.sheets[0]?.cells.find((c) => c.row === place.row && c.column === column)?.value as number,
      );
    const free = valueAt(spring, 'free_length') as number;
    const [x, y] = [numbers(1).map((length) => free - length), numbers(2)];
    const sxx = x.reduce((sum, one) => sum + one * one, 0);
    const slope = x.reduce((sum, one, i) => sum + one * (y[i] ?? NaN), 0) / sxx;
    const misses = x.map((one, i) => (y[i] ?? NaN) - slope * one);
    const error = Math.sqrt(misses.reduce((sum, one) => sum + one * one, 0) / (x.length - 1) / sxx);
    expect(valueAt(spring, 'fitted_spring_rate')).toBeCloseTo(slope, 8);
    expect(valueAt(spring, 'fitted_spring_rate_error')).toBeCloseTo(error, 8);
    expect(valueAt(spring, 'spring_rate')).toBe(valueAt(spring, 'fitted_spring_rate'));
    const worst = Math.max(...misses.map(Math.abs)) / Math.max(...y);
    expect(valueAt(spring, 'spring_rate', NOTE)).toBe(
      `3 shots, ± ${error.toPrecision(3)} N/mm; measured up to ${(100 * worst).toPrecision(3)} % from the prediction; above: 6.54`,
    );
  });

  it('is empty in a design of one’s own, which goes by its own value until two shots are there', async () => {
    const own = await newDesign(wish(['spring', 'shots']), worksheetFunctions);
    expect(shotCells(own, 'Reading', 1)).toEqual([]);
    expect(valueAt(own, 'fitted_spring_rate_shots')).toBe(0);
    expect(valueAt(own, 'fitted_spring_rate')).toBe('–');
    expect(valueAt(own, 'spring_rate')).toBe(valueAt(own, 'spring_rate_without_shots'));
    expect(valueAt(own, 'spring_rate', NOTE)).toBe('As above: the shot log has fewer than two shots.');
    const [first] = shotCells(spring, 'Reading', 1);
    if (!first) throw new Error('no shots');
    const shot = (down: number, length: number, force: number) => [
      { row: first.row + down, column: 1, value: length },
      { row: first.row + down, column: 2, value: force },
    ];
    const measured = await typed(own, [...shot(0, 27, 12), ...shot(3, 25, 24)]);
    expect(valueAt(measured, 'spring_rate')).toBeCloseTo(6, 8);
    expect(valueAt(measured, 'spring_rate', NOTE)).toMatch(/^2 shots, ± /);
  });

  it('takes the value above where that is chosen, or where fewer than two shots are there', async () => {
    const above = valueAt(spring, 'spring_rate_without_shots');
    expect(above).not.toBe(valueAt(spring, 'spring_rate'));
    const chosen = await typed(spring, [{ ...placeOf(spring, 'spring_rate', ENTRY), value: 'above' }]);
    expect(valueAt(chosen, 'spring_rate')).toBe(above);
    expect(valueAt(chosen, 'spring_rate', NOTE)).toMatch(/^As above; by 3 shots, ± .*: 6\.45$/);
    const one = await typed(
      spring,
      [1, 2].flatMap((column) =>
        shotCells(spring, 'Reading', column)
          .slice(1)
          .map((place) => ({ ...place, value: null })),
      ),
    );
    expect(valueAt(one, 'spring_rate')).toBe(above);
    expect(valueAt(one, 'spring_rate', NOTE)).toContain('fewer than two shots');
    expect(verdictOf(one)).toBe('fewer than two shots');
  });

  it('does not hold where a measured result is far from what its function predicts', async () => {
    const [, second] = shotCells(spring, 'Reading', 2);
    const off = await typed(spring, second ? [{ ...second, value: 40 }] : []);
    expect(verdictOf(off)).toBe('✗ does not hold');
  });

  it('says in the design when the shots give no value, which then has none', async () => {
    const ends = await typed(spring, [{ ...placeOf(spring, 'fitted_spring_rate_low', ENTRY), value: 50 }]);
    expect(valueAt(ends, 'spring_rate')).toBeInstanceOf(CellError);
    expect(valueAt(ends, 'spring_rate', NOTE)).toBe('The shots give no value: see the shot log.');
    expect(verdictOf(ends)).toBe('? not known');
  });

  it('keeps what was measured when the units of the sheet change', async () => {
    const inches = await typed(spring, [{ ...placeOf(spring, 'units'), value: 'in' }]);
    const inMm = valueAt(spring, 'spring_rate') as number;
    // 1 lbf/in = 4.4482216152605 N / 25.4 mm, by definition.
    expect(valueAt(inches, 'spring_rate')).toBeCloseTo(inMm / (4.4482216152605 / 25.4), 7);
  });
});

function verdictOf(workbook: Workbook): CellValue | undefined {
  const cells = workbook.sheets[0]?.cells ?? [];
  const row = cells.find(({ value }) => value === 'Rate of the spring: shots against prediction')?.row;
  return cells.find((cell) => cell.row === row && cell.column === 3)?.value;
}
