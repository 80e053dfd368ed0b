import { afterEach, describe, expect, it } from 'vitest';
import { CellError, type CellValue } from '../../src/cells/value';
import { inOwnSign, inStandardForm, setDecimalSign } from '../../src/cells/decimalSign';
import { isFound, replaced } from '../../src/page/findCells';
import { cellsIn } from '../../src/page/largePastes';
import { sortedPlaces } from '../../src/page/sortRows';
import { formatCode } from '../../src/page/sheetTab/FormatPart';
import { blocked, leftBehind } from '../../src/page/sheetTab/inTheWay';
import { sortedCells, sortedOrder, turnedCells } from '../../src/page/sheetTab/rearrange';

describe('sorting', () => {
  const keys = ['b', 10, null, 'A', new CellError('#N/A'), 2, true];

  it('puts numbers before texts, truth values and errors, and blanks last', () => {
    expect(sortedPlaces(keys, false).map((at) => String(keys[at]))).toEqual([
      '2',
      '10',
      'A',
      'b',
      'true',
      '#N/A',
      'null',
    ]);
    expect(sortedPlaces(keys, true).at(-1)).toBe(2);
  });

  it('leaves equal rows in their order', () => {
    expect(sortedPlaces([1, 0, 1, 0], false)).toEqual([1, 3, 0, 2]);
    expect(sortedPlaces([1, 0, 1, 0], true)).toEqual([0, 2, 1, 3]);
  });
});

describe('rows that are sorted', () => {
  const rows = [3, 1, 2].map((value, at) => ({
    // Row 3 between them is hidden and stays.
    row: at === 0 ? 1 : at + 2,
    cells: [
      { value, look: null },
      { value: value * 2, formula: `A${at === 0 ? 2 : at + 3}*B$1+$C9`, look: 'percent' },
    ],
  }));

  it('take their formulas along, which read what stands beside them, and their looks', () => {
    const order = sortedOrder(rows, 0, false);
    expect(order).toEqual([1, 2, 0]);
    const written = sortedCells(rows, order ?? [], 4);
    expect(Object.keys(written)).toEqual(['1', '3', '4']);
    expect(written[1]).toMatchObject({ 4: { v: 1 }, 5: { f: '=A2*B$1+$C7', s: 'percent' } });
    expect(written[4]).toMatchObject({ 4: { v: 3, s: null }, 5: { f: '=A5*B$1+$C12' } });
  });

  it('write nothing where they are in order', () => {
    expect(sortedOrder(rows, 0, false)).toBeDefined();
    expect(sortedOrder(rows.slice(1), 0, false)).toBeUndefined();
  });

  it('name what is in the way, or would stay behind', () => {
    const at = (top: number, left: number, bottom = top, right = left) => ({ top, left, bottom, right });
    expect(blocked(at(1, 0, 5, 2), [at(3, 1, 4, 1)], [])).toContain('merged cells B4:B5');
    expect(blocked(at(1, 0, 5, 2), [], [at(5, 2, 9, 2)])).toContain('results in C6:C10');
    expect(blocked(at(1, 0, 5, 2), [at(6, 0, 7, 0)], [at(0, 0)])).toBeUndefined();
    const table = { name: 'Cuts', area: at(0, 0, 5, 2), hasHeader: true, hasTotals: false, columns: [] };
    const sheet = { notes: [{ row: 2, column: 1, text: 'deep' }], hyperlinks: [], tables: [table] };
    expect(leftBehind(sheet, at(0, 0, 5, 2), () => true)).toContain('the table "Cuts"');
    expect(leftBehind(sheet, at(1, 0, 5, 2), () => true)).toContain('The note on B3');
    expect(leftBehind(sheet, at(1, 0, 5, 2), (row) => row !== 2)).toBeUndefined();
  });

  it('turned, are columns of values', () => {
    expect(turnedCells(rows, { row: 9, column: 1 })).toMatchObject({
      9: { 1: { v: 3 }, 2: { v: 1 }, 3: { v: 2 } },
      10: { 1: { v: 6, f: null, s: 'percent' }, 2: { v: 2 }, 3: { v: 4 } },
    });
  });
});

describe('finding', () => {
  const plain = { inFormulas: false, matchesCase: false, isWhole: false };
  const cell = (value: CellValue, formula?: string, shown = String(value)) => ({
    value,
    ...(formula !== undefined && { formula }),
    shown: () => shown,
  });

  it('looks at values, or at formulas', () => {
    const six = cell(6, 'A1*3');
    expect(isFound(six, { ...plain, text: 'A1' })).toBe(false);
    expect(isFound(six, { ...plain, text: 'a1', inFormulas: true })).toBe(true);
    expect(isFound(six, { ...plain, text: '6' })).toBe(true);
    expect(isFound(cell('Seat'), { ...plain, text: 'seat', matchesCase: true })).toBe(false);
    expect(isFound(cell('Seat'), { ...plain, text: 'sea', isWhole: true })).toBe(false);
  });

  it('finds a number as it is and as it is shown', () => {
    const fraction = cell(0.625, undefined, '5/8');
    expect(isFound(fraction, { ...plain, text: '5/8' })).toBe(true);
    expect(isFound(fraction, { ...plain, text: '0.625' })).toBe(true);
    expect(replaced(fraction, { ...plain, text: '5/8' }, '3/4')).toBe('3/4');
    expect(isFound(cell(new CellError('#REF!')), { ...plain, text: '#ref!' })).toBe(true);
    expect(isFound(cell(null, undefined, ''), { ...plain, text: 'a' })).toBe(false);
  });

  it('replaces what was typed and never a result, with signs taken as they are', () => {
    expect(replaced(cell('a.b a.b'), { ...plain, text: 'a.b' }, '$&')).toBe('$& $&');
    expect(replaced(cell(6, 'A1*3'), { ...plain, text: '6' }, '7')).toBeUndefined();
    expect(replaced(cell(6, 'A1*3'), { ...plain, text: 'A1', inFormulas: true }, 'B1')).toBe('=B1*3');
  });
});

describe('the decimal comma', () => {
  afterEach(() => {
    setDecimalSign('.');
  });

  it('is read and shown where it was chosen, and nowhere else', () => {
    expect(inStandardForm('0,5 mm')).toBe('0,5 mm');
    setDecimalSign(',');
    expect(['0,5', '-12,75 mm', ',5 in', '0.5', '1,2,3', 'a, b'].map(inStandardForm)).toEqual([
      '0.5',
      '-12.75 mm',
      '.5 in',
      '0.5',
      '1,2,3',
      'a, b',
    ]);
    expect(['0.5', '1,234.50 mm', '5 in.', '.5'].map(inOwnSign)).toEqual([
      '0,5',
      '1.234,50 mm',
      '5 in.',
      ',5',
    ]);
    setDecimalSign('.');
    expect(inOwnSign('0.5')).toBe('0.5');
  });
});

it('formats are written as files know them', () => {
  expect(formatCode('decimals', 3, 8, 'mm')).toBe('0.000" mm"');
  expect(formatCode('percent', 1, 8, '')).toBe('0.0%');
  expect(formatCode('inches', 0, 64, '')).toBe('# ??/64\\"');
  expect(formatCode('text', 0, 8, '')).toBe('@');
});

it('the cells of a clipboard are counted before they are pasted', () => {
  expect(cellsIn('a')).toBe(1);
  expect(cellsIn('1\t2\r\n3\t4\r\n')).toBe(4);
  expect(cellsIn('x\ty\n'.repeat(50_000))).toBe(100_000);
});
