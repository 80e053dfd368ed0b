import { expect, it } from 'vitest';
import { worksheetFunctions } from '../../src/call/functions';
import { newWorkbook, readWorkbook } from '../../src/package';
import { shownText } from '../../src/render/shownText';
import { shareWorkbook } from '../../src/share';
import { withSign } from '../../src/share/signedFormats';

const shown = (value: number, format: string): string => shownText(value, format, () => true, false).text;

it.each([
  ['[>=100]#,##0;0.0', '[<100]0.0;#,##0'],
  ['[>100]#,##0;0.0', '[<=100]0.0;#,##0'],
  ['[>=1000]#,##0;[>=50]0;0.00', '[<50]0.00;[<1000]0;#,##0'],
  ['[>=0.5]0" in;"\\;;0.00', '[<0.5]0.00;0" in;"\\;'],
])('%s, whose last section would lose a sign, becomes %s', (format, signed) => {
  expect(withSign(format)).toBe(signed);
  for (const value of [0, 0.25, 49.9, 50, 99.9, 100, 100.4, 1234.5, -0.25, -4.34])
    expect(shown(value, signed)).toBe(shown(value, format));
});

it.each([
  'General',
  '0.00;-0.00',
  '0.00;(0.00);"none"',
  '[>=100]0;-0.0',
  '[>=0]0;0.0',
  '[<100]0.0;#,##0',
  '[>=50]0;[>=1000]#,##0;0.00',
  '[Red][>=100]0;0.0',
  '[>=100]0;[<0]0.0;0.00',
])('%s stays as it is', (format) => {
  expect(withSign(format)).toBe(format);
});

it('is done in a copy, and the values stay', async () => {
  const styles = { force: { numberFormat: '[>=100]#,##0;0.0' } };
  const cells = { A1: { value: -4.34, style: 'force' }, A2: { formula: 'MOLD.SEAT.FORCE(100,10,0.15)' } };
  const { bytes } = await shareWorkbook(
    newWorkbook({ sheets: [{ name: 'Seat', cells }], styles }),
    worksheetFunctions,
    {
      as: 'native',
    },
  );
  const copy = readWorkbook(bytes, []);
  const cell = copy.sheets[0]?.cells.find(({ row }) => row === 0);
  expect(cell?.value).toBe(-4.34);
  expect(copy.styles[cell?.style ?? 0]?.numberFormat).toBe('[<100]0.0;#,##0');
});
