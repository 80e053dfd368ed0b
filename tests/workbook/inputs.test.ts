import { describe, expect, it } from 'vitest';
import { cellAddress } from '../../src/cells/address';
import type { SheetDescription } from '../../src/package/description';
import { newWorkbook } from '../../src/package/author';
import { markedInputs } from '../../src/workbook/inputs';

const YELLOW = { fill: '#FFF7D1' };

function inputsOf(sheet: Omit<SheetDescription, 'name'>, read: readonly string[] = []) {
  const workbook = newWorkbook({
    sheets: [{ name: 'A', ...sheet }],
    styles: { typed: YELLOW, open: { locked: false }, head: { fill: '#24475C' } },
  });
  const { marked, places } = markedInputs(workbook, ({ row, column }) =>
    read.includes(cellAddress(row, column)),
  );
  return { marked, cells: places.map(({ row, column }) => cellAddress(row, column)) };
}

describe('the inputs of a workbook', () => {
  it('are the unlocked cells of a protected sheet', () => {
    const cells = { A1: 1, B1: { value: 2, style: 'open' }, C1: { formula: 'A1', style: 'open' } };
    expect(inputsOf({ cells, protect: true })).toEqual({ marked: true, cells: ['B1'] });
  });

  it('are cells with a rule for entries, and those in their color, but no formulas', () => {
    const typed = (value: number) => ({ value, style: 'typed' });
    expect(
      inputsOf({
        cells: {
          A1: typed(1),
          A2: typed(2),
          A3: 3,
          A4: { value: 'Head', style: 'head' },
          A5: { formula: 'A1+1' },
        },
        validations: [{ cells: 'A1', accepts: 'A1<9' }],
      }),
    ).toEqual({ marked: true, cells: ['A1', 'A2'] });
  });

  it('are not in a color that formulas wear too', () => {
    expect(
      inputsOf({
        cells: {
          A1: { value: 1, style: 'typed' },
          A2: { value: 2, style: 'typed' },
          A3: { formula: 'A1', style: 'typed' },
        },
        validations: [{ cells: 'A1', accepts: 'A1<9' }],
      }).cells,
    ).toEqual(['A1']);
  });

  it('are the numbers that formulas read where nothing is marked', () => {
    expect(inputsOf({ cells: { A1: 1, A2: 2, A3: 'words', A4: { formula: 'A1' } } }, ['A1', 'A3'])).toEqual({
      marked: false,
      cells: ['A1'],
    });
  });
});
