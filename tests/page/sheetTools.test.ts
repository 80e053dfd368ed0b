import { afterEach, describe, expect, it, vi } from 'vitest';
import { CellError } from '../../src/cells/value';
import { chooseDecimalSign, inOwnSign, inStandardForm } from '../../src/page/decimalSign';
import { isFound, replaced } from '../../src/page/findCells';
import { cellsIn } from '../../src/page/largePastes';
import { sortedPlaces } from '../../src/page/sortRows';
import { formatCode } from '../../src/page/sheetTab/FormatPart';

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

describe('finding', () => {
  const plain = { inFormulas: false, matchesCase: false, isWhole: false };

  it('looks at values, or at formulas', () => {
    const cell = { value: 6, formula: 'A1*3' };
    expect(isFound(cell, { ...plain, text: 'A1' })).toBe(false);
    expect(isFound(cell, { ...plain, text: 'a1', inFormulas: true })).toBe(true);
    expect(isFound(cell, { ...plain, text: '6' })).toBe(true);
    expect(isFound({ value: 'Seat' }, { ...plain, text: 'seat', matchesCase: true })).toBe(false);
    expect(isFound({ value: 'Seat' }, { ...plain, text: 'sea', isWhole: true })).toBe(false);
  });

  it('replaces what was typed and never a result, with signs taken as they are', () => {
    expect(replaced({ value: 'a.b a.b' }, { ...plain, text: 'a.b' }, '$&')).toBe('$& $&');
    expect(replaced({ value: 6, formula: 'A1*3' }, { ...plain, text: '6' }, '7')).toBeUndefined();
    expect(replaced({ value: 6, formula: 'A1*3' }, { ...plain, text: 'A1', inFormulas: true }, 'B1')).toBe(
      '=B1*3',
    );
  });
});

describe('the decimal comma', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
  });

  it('is read and shown where it was chosen, and nowhere else', () => {
    vi.stubGlobal('localStorage', { setItem: () => undefined });
    expect(inStandardForm('0,5 mm')).toBe('0,5 mm');
    chooseDecimalSign(',');
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
    chooseDecimalSign('.');
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
