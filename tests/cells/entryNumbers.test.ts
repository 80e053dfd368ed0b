import { format } from 'numfmt';
import { describe, expect, it } from 'vitest';
import { readQuantity } from '../../src/core/readQuantity';
import { parseDate, parseNumber, parseTime } from '../../src/cells/entryNumbers';

/** In the order in which the grid asks. */
const read = (text: string) => parseDate(text) ?? parseTime(text) ?? parseNumber(text);

describe('what is typed', () => {
  it.each([
    ['5/8', 0.625],
    ['1-1/2', 1.5],
    ['1 3/8', 1.375],
    ['-3/4', -0.75],
    ['4/8', 0.5],
    ['-1 1/2', -1.5],
    ['11/8', 1.375],
  ])('is a number shown as it was, as a fraction: %s', (text, value) => {
    const found = read(text);
    expect(found?.v).toBeCloseTo(value, 15);
    const shown = format(String(found?.z), Number(found?.v)).replace(/\s+/g, ' ').trim();
    expect(shown).toBe(text.replace('1-1/2', '1 1/2'));
  });

  it.each(['10-24', '1/4-20', '5-40', '#10-24', '1-1/2-6', 'M6x1', '1/2-13'])(
    'stays text where it is a thread: %s',
    (text) => {
      expect(read(text) ?? null).toBeNull();
    },
  );

  it.each(['5/8"', '1-1/2"', '13/64″', ".25''", "2''", '.25"'])(
    'stays text with an inch mark, which functions read in any units: %s',
    (text) => {
      expect(read(text) ?? null).toBeNull();
      const reading = readQuantity(text, 'length');
      expect(reading).toMatchObject({ ok: true, unit: { symbol: 'in' } });
    },
  );

  it.each(['Oct 24', '24 Oct', '3-Apr', '4/31x'])('is never a date without a year: %s', (text) => {
    expect(read(text) ?? null).toBeNull();
  });

  it.each([
    ['2024-05-08', 45_420],
    ['5/8/2024', 45_420],
    ['12', 12],
    ['-2.5', -2.5],
    ['1e3', 1000],
    ['50%', 0.5],
    ['0/5', 0],
  ])('is read as before otherwise: %s', (text, value) => {
    expect(read(text)?.v).toBe(value);
  });

  it.each(['0,25', '1,5', '12,34', '1,2345', '5,', '1,000,00', '0,5 mm'])(
    'is no number with a comma that is neither a decimal sign here nor between thousands: %s',
    (text) => {
      expect(read(text) ?? null).toBeNull();
    },
  );

  it.each([
    ['1,000', 1000],
    ['-12,345.5', -12_345.5],
    ['$1,250.75', 1250.75],
    ['1,234,567', 1_234_567],
  ])('may have commas between thousands: %s', (text, value) => {
    expect(read(text)?.v).toBe(value);
  });

  it('is no number where nothing is to be divided by', () => {
    expect(read('5/0') ?? null).toBeNull();
  });
});
