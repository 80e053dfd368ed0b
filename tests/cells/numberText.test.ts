import { describe, expect, it } from 'vitest';
import { generalText } from '../../src/cells/numberText';

/** Shows a number in a column that has room for so many characters. */
const shown = (value: number, room: number) => generalText(value, (text) => text.length <= room);

describe('a number without a format', () => {
  it('shows ten digits where there is room', () => {
    expect(shown(4226.811598667199, 20)).toBe('4226.811599');
    expect(shown(0.1 + 0.2, 20)).toBe('0.3');
    expect(shown(25, 20)).toBe('25');
    expect(shown(-0.5, 20)).toBe('-0.5');
    expect(shown(0, 20)).toBe('0');
  });

  it('loses decimals to a narrow column, never digits before the point', () => {
    expect(shown(4226.811598667199, 8)).toBe('4226.812');
    expect(shown(4226.811598667199, 4)).toBe('4227');
    expect(shown(12345678, 7)).toBe('1.2E+07');
    expect(shown(12345678, 4)).toBeUndefined();
  });

  it('never shows a small number as zero', () => {
    expect(shown(0.00123, 5)).toBe('0.001');
    expect(shown(0.00123, 8)).toBe('0.00123');
    expect(shown(0.000456, 4)).toBeUndefined();
    expect(shown(0.000456, 5)).toBe('5E-04');
    expect(shown(1.5e-7, 10)).toBe('1.5E-07');
  });

  it('shows a large one with an exponent', () => {
    expect(shown(1.23456789e12, 20)).toBe('1.23457E+12');
    expect(shown(-1e100, 20)).toBe('-1E+100');
  });
});
