import { strToU8, zipSync } from 'fflate';
import { DOC, MAIN, rels, small, types } from '../package/packages';

const XDR = 'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing';
const A = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const C = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
/** One red pixel. */
const PNG =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR4nGP4z8DwHwAFAAH/iZk9HQAAAABJRU5ErkJggg==';

const corner = (name: string, row: number, column: number): string =>
  `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
const named = (kind: string, id: number, name: string, more = ''): string =>
  `<xdr:nv${kind}Pr><xdr:cNvPr id="${id}" name="${name}"${more}/><xdr:cNv${kind}Pr/></xdr:nv${kind}Pr>`;

const drawing =
  `<xdr:wsDr xmlns:xdr="${XDR}" xmlns:a="${A}" xmlns:r="${DOC}">` +
  `<xdr:oneCellAnchor>${corner('from', 1, 1)}<xdr:ext cx="952500" cy="476250"/>` +
  `<xdr:pic>${named('Pic', 2, 'Logo', ' descr="A dot"')}<xdr:blipFill><a:blip r:embed="rId1"/></xdr:blipFill><xdr:spPr/></xdr:pic><xdr:clientData/></xdr:oneCellAnchor>` +
  `<xdr:twoCellAnchor>${corner('from', 1, 4)}${corner('to', 11, 9)}<xdr:graphicFrame>${named('GraphicFrame', 3, 'Pie')}` +
  `<a:graphic><a:graphicData uri="${C}"><c:chart xmlns:c="${C}" r:id="rId2"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>` +
  `<xdr:absoluteAnchor><xdr:pos x="0" y="2857500"/><xdr:ext cx="1905000" cy="476250"/><xdr:sp>${named('Sp', 4, 'Box')}<xdr:spPr/>` +
  '<xdr:txBody><a:p><a:r><a:t>Mind the </a:t></a:r><a:r><a:t>pinch point</a:t></a:r></a:p></xdr:txBody></xdr:sp><xdr:clientData/></xdr:absoluteAnchor>' +
  '</xdr:wsDr>';

/** A workbook with a picture, a chart of a kind that is not drawn, and a box with words. */
export function pictured(): Uint8Array {
  const base = small('<row r="1"><c r="A1"><v>1</v></c></row>');
  const texts = {
    ...base,
    '[Content_Types].xml': types({
      'xl/workbook.xml': 'sheet.main+xml',
      'xl/worksheets/sheet1.xml': 'worksheet+xml',
      'xl/drawings/drawing1.xml': 'application/vnd.openxmlformats-officedocument.drawing+xml',
      'xl/charts/chart1.xml': 'application/vnd.openxmlformats-officedocument.drawingml.chart+xml',
      'xl/media/image1.png': 'image/png',
    }),
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${MAIN}" xmlns:r="${DOC}"><sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData><drawing r:id="rId1"/></worksheet>`,
    'xl/worksheets/_rels/sheet1.xml.rels': rels(['drawing', '../drawings/drawing1.xml']),
    'xl/drawings/drawing1.xml': drawing,
    'xl/drawings/_rels/drawing1.xml.rels': rels(
      ['image', '../media/image1.png'],
      ['chart', '../charts/chart1.xml'],
    ),
    'xl/charts/chart1.xml': `<c:chartSpace xmlns:c="${C}"><c:chart><c:plotArea><c:pieChart><c:ser><c:val><c:numRef><c:f>Main!$A$1</c:f></c:numRef></c:val></c:ser></c:pieChart></c:plotArea></c:chart></c:chartSpace>`,
  };
  return zipSync({
    ...Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, strToU8(text)])),
    'xl/media/image1.png': Uint8Array.from(atob(PNG), (letter) => letter.charCodeAt(0)),
  });
}
