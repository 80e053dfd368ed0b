import { unzipSync as unzip, zipSync as zip } from 'fflate';
import { describe, expect, it } from 'vitest';
import { fileEnding, newWorkbook, readWorkbook, saveWorkbook } from '../../src/package';

const parts = (): Record<string, Uint8Array> =>
  unzip(saveWorkbook(newWorkbook({ sheets: [{ name: 'A', cells: { A1: 'Draft °', B1: 5 } }] }), []));
const text = (bytes: Uint8Array | undefined): string => new TextDecoder().decode(bytes);

function utf16(xml: string, marked: boolean): Uint8Array {
  const said = xml.replace(/encoding="[^"]*"/, 'encoding="UTF-16"');
  const units = Uint16Array.from((marked ? '\ufeff' : '') + said, (letter) => letter.charCodeAt(0));
  return new Uint8Array(units.buffer);
}

describe('a workbook', () => {
  it.each([true, false])(
    'with parts of two bytes a character opens and is saved readable (mark of order: %s)',
    (marked) => {
      const all = parts();
      for (const name of Object.keys(all).filter((one) => /sheet1\.xml$|workbook\.xml$/.test(one)))
        all[name] = utf16(text(all[name]), marked);
      const workbook = readWorkbook(zip(all), []);
      expect(workbook.sheets[0]?.cells[0]?.value).toBe('Draft °');
      const saved = saveWorkbook(workbook, [{ sheet: 'A', row: 0, column: 1, value: 6 }]);
      expect(text(unzip(saved)['xl/worksheets/sheet1.xml'])).toMatch(/^<\?xml[^>]*UTF-8/);
      expect(readWorkbook(saved, []).sheets[0]?.cells[1]?.value).toBe(6);
    },
  );

  it('whose parts are named with the slashes of Windows opens', () => {
    const all = Object.fromEntries(
      Object.entries(parts()).map(([name, bytes]) => [name.replaceAll('/', '\\'), bytes]),
    );
    expect(readWorkbook(zip(all), []).sheets[0]?.cells[1]?.value).toBe(5);
  });

  it('with macros keeps them to the byte and its ending', () => {
    const all = parts();
    const macros = Uint8Array.from({ length: 300 }, (_, i) => i % 251);
    all['xl/vbaProject.bin'] = macros;
    all['[Content_Types].xml'] = new TextEncoder().encode(
      text(all['[Content_Types].xml'])
        .replace(
          'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml',
          'application/vnd.ms-excel.sheet.macroEnabled.main+xml',
        )
        .replace(
          '</Types>',
          '<Default Extension="bin" ContentType="application/vnd.ms-office.vbaProject"/></Types>',
        ),
    );
    all['xl/_rels/workbook.xml.rels'] = new TextEncoder().encode(
      text(all['xl/_rels/workbook.xml.rels']).replace(
        '</Relationships>',
        '<Relationship Id="rId99" Type="http://schemas.microsoft.com/office/2006/relationships/vbaProject" Target="vbaProject.bin"/></Relationships>',
      ),
    );
    const workbook = readWorkbook(zip(all), []);
    expect(fileEnding(workbook.parts)).toBe('.xlsm');
    const saved = unzip(saveWorkbook(workbook, [{ sheet: 'A', row: 0, column: 1, value: 7 }]));
    expect(saved['xl/vbaProject.bin']).toEqual(macros);
  });
});
