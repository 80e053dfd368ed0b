import type { Worksheet } from '@univerjs/core';
import { afterEach, expect, it } from 'vitest';
import { setDecimalSign } from '../../src/cells/decimalSign';
import { editedText, keptAsEdited, noteEdited } from '../../src/page/editedNumbers';

afterEach(() => {
  setDecimalSign('.');
});

it('a number is edited as it is shown where that is the number itself', () => {
  expect(editedText(0.625, '5/8', '# ?/8')).toBe('5/8');
  expect(editedText(1.375, '1 3/8', '# ?/8')).toBe('1 3/8');
  expect(editedText(12, '12', 'General')).toBe('12');
});

it('what its cell rounds is edited with all digits', () => {
  expect(editedText(0.1234567891234, '0.12', 'General')).toBe('0.1234567891234');
  expect(editedText(0.3, '19/64', '# ??/64')).toBe('0.3');
  expect(editedText(1.005e-7, '0.00', '0.00')).toBe('1.005E-7');
  expect(editedText(0.12345, '12%', '0%')).toBe('12.345%');
});

it('a date is edited as it is shown, with the time that its format hides', () => {
  expect(editedText(46150, '2026-05-08', 'yyyy-mm-dd')).toBe('2026-05-08');
  expect(editedText(46150.25, '2026-05-08', 'yyyy-mm-dd')).toBe('2026-05-08 06:00:00');
  expect(editedText(46150.755011574074, '2026-05-08', 'd-mmm')).toBe('2026-05-08 18:07:13');
});

it('a number is kept where its editor was left as it was, though the text says less', () => {
  const worksheet = { getCellRaw: () => ({ v: 46150.123456789 }) } as unknown as Worksheet;
  const at = { worksheet, row: 1, col: 2 };
  noteEdited({ ...at, text: '2026-05-08', value: 46150.123456789 });
  expect(keptAsEdited(at, '2026-05-08')).toBe(46150.123456789);
  expect(keptAsEdited(at, '2026-05-09')).toBeUndefined();
  expect(keptAsEdited({ ...at, row: 2 }, '2026-05-08')).toBeUndefined();
});

it('the person’s decimal sign stands in the editor too', () => {
  setDecimalSign(',');
  expect(editedText(0.5, '0,5', 'General')).toBe('0,5');
  expect(editedText(1234.5678, '1.234,57', '#,##0.00')).toBe('1234,5678');
  expect(editedText(0.125, '12.5%', '0.0%')).toBe('12,5%');
});
