import { format } from 'numfmt';
import { describe, expect, it } from 'vitest';
import { formatAfter } from '../../src/page/entryFormats';
import { readEntry } from '../../src/cells/entryNumbers';

/** The format of a cell after an entry, where it is another one. */
function after(current: string, text: string): string | undefined {
  const read = readEntry(text);
  if (!read) throw new Error(`${text} is text.`);
  return formatAfter(current, read);
}

describe('the format of a cell after an entry', () => {
  it.each([
    ['d-mmm', '5', 'General'],
    ['m/d', '0.375', 'General'],
    ['"yr" d/m', '5', 'General'],
    ['d-mmm', '2026-05-08', 'yyyy-mm-dd'],
    ['h:mm', '7', 'General'],
    ['[h]:mm', '36.5', 'General'],
    ['d-mmm', '50%', '0%'],
  ])('gives way where it is a date without a year: %s, %s', (current, text, expected) => {
    expect(after(current, text)).toBe(expected);
  });

  it.each([
    ['yyyy-mm-dd', '2026-05-08'],
    ['d/m/yy', '5/8/2024'],
    ['mmm-yy', '46150'],
    ['h:mm', '7:30'],
    ['0.00', '5'],
    ['General', '5'],
  ])('stays otherwise: %s, %s', (current, text) => {
    expect(after(current, text)).toBeUndefined();
  });

  it.each(['5/8', '13/64', '1 3/8', '-3/4'])('shows the fraction that was typed: %s', (text) => {
    for (const current of ['# ?/8', 'd-mmm', '0.00', 'yyyy-mm-dd']) {
      const read = readEntry(text);
      const shown = format(formatAfter(current, read ?? { v: 0 }) ?? current, Number(read?.v));
      expect(shown.trim().replace(/\s+/g, ' ')).toBe(text);
    }
  });

  it('is no fraction where a decimal number would be rounded to one', () => {
    expect(after('?/8', '0.3')).toBe('General');
    expect(after('# ?/8', '0.375')).toBeUndefined();
    expect(after('# ?/8', '2')).toBeUndefined();
    expect(after('# ??/64\\"', '0.203125')).toBeUndefined();
    expect(after('# ??/64\\"', '0.3')).toBe('General');
  });
});
