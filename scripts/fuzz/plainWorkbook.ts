/** The smallest .xlsx file that holds one sheet of cells: what LibreOffice is given to calculate. */
import { strToU8, zipSync } from 'fflate';
import { cellAddress } from '../../src/cells/address';
import { toFileSpelling } from '../../src/package/spelling';

export interface PlainCell {
  readonly row: number;
  readonly column: number;
  readonly value?: number | string;
  readonly formula?: string;
}

const NS = 'http://schemas.openxmlformats.org';
const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

function cellXml({ row, column, value, formula }: PlainCell): string {
  const at = cellAddress(row, column);
  if (formula !== undefined) return `<c r="${at}"><f>${escaped(toFileSpelling(formula))}</f></c>`;
  return typeof value === 'number'
    ? `<c r="${at}"><v>${value}</v></c>`
    : `<c r="${at}" t="inlineStr"><is><t xml:space="preserve">${escaped(value ?? '')}</t></is></c>`;
}

export function plainWorkbook(cells: readonly PlainCell[]): Uint8Array {
  const rows = new Map<number, PlainCell[]>();
  for (const cell of cells) rows.set(cell.row, [...(rows.get(cell.row) ?? []), cell]);
  const lines = [...rows]
    .sort(([a], [b]) => a - b)
    .map(([row, line]) => `<row r="${row + 1}">${line.map(cellXml).join('')}</row>`);
  const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
  const parts = {
    '[Content_Types].xml': `<Types xmlns="${NS}/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/></Types>`,
    '_rels/.rels': `<Relationships xmlns="${NS}/package/2006/relationships"><Relationship Id="rId1" Type="${NS}/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${NS}/package/2006/relationships"><Relationship Id="rId1" Type="${NS}/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    'xl/workbook.xml': `<workbook xmlns="${NS}/spreadsheetml/2006/main" xmlns:r="${NS}/officeDocument/2006/relationships"><sheets><sheet name="Fuzz" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${NS}/spreadsheetml/2006/main"><sheetData>${lines.join('')}</sheetData></worksheet>`,
  };
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, xml]) => [name, strToU8(head + xml)])));
}
