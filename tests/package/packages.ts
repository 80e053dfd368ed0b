/** Workbooks written by hand, part by part, for the tests of reading and saving. */
import { strToU8, unzipSync, zipSync } from 'fflate';

export const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
export const DOC = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';
const SHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml.';
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n';

export type Files = Record<string, string>;

export const zip = (files: Files): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)])));

export const unzip = (bytes: Uint8Array): Record<string, Uint8Array> => unzipSync(bytes);

export const textOf = (bytes: Uint8Array, part: string): string =>
  new TextDecoder().decode(unzip(bytes)[part]);

export const rels = (...list: readonly (readonly [kind: string, target: string])[]): string =>
  `${HEAD}<Relationships xmlns="${PACKAGE}">${list
    .map(([kind, target], at) => {
      const mode = /^https?:/.test(target) ? ' TargetMode="External"' : '';
      return `<Relationship Id="rId${at + 1}" Type="${kind.includes(':') ? kind : `${DOC}/${kind}`}" Target="${target}"${mode}/>`;
    })
    .join('')}</Relationships>`;

export const types = (overrides: Readonly<Record<string, string>>): string =>
  `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">` +
  '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
  '<Default Extension="xml" ContentType="application/xml"/><Default Extension="bin" ContentType="application/octet-stream"/>' +
  Object.entries(overrides)
    .map(
      ([part, type]) =>
        `<Override PartName="/${part}" ContentType="${type.includes('/') ? type : SHEET + type}"/>`,
    )
    .join('') +
  '</Types>';

/** The smallest workbook, its one sheet with the data given. */
export function small(sheetData: string, more: Files = {}): Files {
  return {
    '[Content_Types].xml': types({
      'xl/workbook.xml': 'sheet.main+xml',
      'xl/worksheets/sheet1.xml': 'worksheet+xml',
    }),
    '_rels/.rels': rels(['officeDocument', 'xl/workbook.xml']),
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${DOC}"><sheets><sheet name="Main" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': rels(['worksheet', 'worksheets/sheet1.xml']),
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${MAIN}"><sheetData>${sheetData}</sheetData></worksheet>`,
    ...more,
  };
}

/** One of nearly everything that a workbook can hold. */
export function rich(): Files {
  return {
    '[Content_Types].xml': types({
      'xl/workbook.xml': 'sheet.main+xml',
      'xl/worksheets/sheet1.xml': 'worksheet+xml',
      'xl/worksheets/sheet2.xml': 'worksheet+xml',
      'xl/styles.xml': 'styles+xml',
      'xl/sharedStrings.xml': 'sharedStrings+xml',
      'xl/calcChain.xml': 'calcChain+xml',
      'xl/metadata.xml': 'sheetMetadata+xml',
      'xl/tables/table1.xml': 'table+xml',
      'xl/theme/theme1.xml': 'application/vnd.openxmlformats-officedocument.theme+xml',
      'xl/drawings/drawing1.xml': 'application/vnd.openxmlformats-officedocument.drawing+xml',
      'xl/charts/chart1.xml': 'application/vnd.openxmlformats-officedocument.drawingml.chart+xml',
      'docProps/custom.xml': 'application/vnd.openxmlformats-officedocument.custom-properties+xml',
    }),
    '_rels/.rels': rels(
      ['officeDocument', 'xl/workbook.xml'],
      ['custom-properties', 'docProps/custom.xml'],
      ['http://example.org/unknown', 'odd/unknown.bin'],
    ),
    'odd/unknown.bin': '\u0000\u0001 not for us',
    'docProps/custom.xml': `${HEAD}<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/custom-properties"/>`,
    'xl/workbook.xml':
      `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${DOC}"><workbookPr/><bookViews><workbookView activeTab="0"/></bookViews>` +
      '<sheets><sheet name="Seat &amp; spring" sheetId="3" r:id="rId1"/><sheet name="Lists" sheetId="7" state="hidden" r:id="rId2"/></sheets>' +
      '<definedNames><definedName name="_xlnm.Print_Area" localSheetId="0">\'Seat &amp; spring\'!$A$1:$F$20</definedName>' +
      '<definedName name="draft">\'Seat &amp; spring\'!$B$2</definedName>' +
      '<definedName name="twice">_xlfn.LAMBDA(_xlpm.a,_xlpm.a*2)</definedName>' +
      '<definedName name="local" localSheetId="1" hidden="1">Lists!$A$1</definedName></definedNames>' +
      '<calcPr calcId="191029" fullCalcOnLoad="1"/><extLst><ext uri="{x}"/></extLst></workbook>',
    'xl/_rels/workbook.xml.rels': rels(
      ['worksheet', 'worksheets/sheet1.xml'],
      ['worksheet', '/xl/worksheets/sheet2.xml'],
      ['styles', 'styles.xml'],
      ['sharedStrings', 'sharedStrings.xml'],
      ['calcChain', 'calcChain.xml'],
      ['sheetMetadata', 'metadata.xml'],
      ['theme', 'theme/theme1.xml'],
    ),
    'xl/calcChain.xml': `<calcChain xmlns="${MAIN}"><c r="B3" i="1"/></calcChain>`,
    'xl/theme/theme1.xml':
      '<a:theme xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"><a:themeElements><a:clrScheme name="x">' +
      '<a:dk1><a:sysClr val="windowText" lastClr="000000"/></a:dk1><a:lt1><a:sysClr val="window" lastClr="FFFFFF"/></a:lt1>' +
      '<a:dk2><a:srgbClr val="1F497D"/></a:dk2><a:lt2><a:srgbClr val="EEECE1"/></a:lt2><a:accent1><a:srgbClr val="4F81BD"/></a:accent1>' +
      '</a:clrScheme></a:themeElements></a:theme>',
    'xl/sharedStrings.xml':
      `<sst xmlns="${MAIN}"><si><t>Draft</t></si><si><r><rPr><b/></rPr><t xml:space="preserve">Seat </t></r><r><t>force</t></r>` +
      '<rPh sb="0" eb="1"><t>reading aid</t></rPh></si><si><t>a_x000D_b _x005F_x0041_</t></si></sst>',
    'xl/styles.xml':
      `<styleSheet xmlns="${MAIN}"><numFmts count="1"><numFmt numFmtId="170" formatCode="0.000&quot; mm&quot;"/></numFmts>` +
      '<fonts count="2"><font><sz val="10"/><name val="Arial"/></font><font><b/><u/><sz val="14"/><color theme="4" tint="-0.249977111117893"/><name val="Arial"/></font></fonts>' +
      '<fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill>' +
      '<fill><patternFill patternType="solid"><fgColor theme="0" tint="-0.149998474074526"/></patternFill></fill></fills>' +
      '<borders count="2"><border/><border><left style="thin"><color indexed="10"/></left><bottom style="double"/></border></borders>' +
      '<cellXfs count="4"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>' +
      '<xf numFmtId="170" fontId="1" fillId="2" borderId="1"><alignment horizontal="center" wrapText="1" textRotation="135"/></xf>' +
      '<xf numFmtId="14" fontId="0" fillId="0" borderId="0"/><xf numFmtId="10" fontId="0" fillId="0" borderId="0"><protection locked="0"/></xf></cellXfs>' +
      '<dxfs count="1"><dxf><font><color rgb="FF9C0006"/></font><fill><patternFill><bgColor rgb="FFFFC7CE"/></patternFill></fill></dxf></dxfs></styleSheet>',
    'xl/metadata.xml':
      `<metadata xmlns="${MAIN}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="2">` +
      '<metadataType name="XLRICHVALUE" minSupportedVersion="120000"/><metadataType name="XLDAPR" minSupportedVersion="120000" cellMeta="1"/></metadataTypes>' +
      '<futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata>' +
      '<futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}">' +
      '<xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata>' +
      '<cellMetadata count="2"><bk><rc t="1" v="0"/></bk><bk><rc t="2" v="0"/></bk></cellMetadata></metadata>',
    'xl/worksheets/sheet1.xml':
      `${HEAD}<worksheet xmlns="${MAIN}" xmlns:r="${DOC}" xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main">` +
      '<sheetPr><tabColor rgb="FF00B050"/></sheetPr><dimension ref="A1:C8"/>' +
      '<sheetViews><sheetView showGridLines="0" zoomScale="90" workbookViewId="0"><pane xSplit="1" ySplit="2" topLeftCell="B3" state="frozen"/></sheetView></sheetViews>' +
      '<sheetFormatPr defaultRowHeight="14.5"/><cols><col min="1" max="1" width="20.5" customWidth="1"/><col min="2" max="3" width="12" style="3" hidden="1"/></cols>\n' +
      '<sheetData>\n' +
      '<row r="1" spans="1:3" ht="30" customHeight="1"><c r="A1" s="1" t="s"><v>1</v></c><c r="C1" t="inlineStr"><is><t>in</t></is></c></row>' +
      '<row r="2"><c r="A2" t="s"><v>0</v></c><c r="B2" s="2"><v>45000.5</v></c></row>' +
      '<row r="3"><c r="B3"><f t="shared" ref="B3:B5" si="0">$B$2+A3*LOG10(10)</f><v>1</v></c></row>' +
      '<row r="4"><c r="B4"><f t="shared" si="0"/><v>2</v></c></row>' +
      '<row r="5"><c r="B5"><f t="shared" si="0"/><v>3</v></c><c r="C5" t="b"><v>1</v></c></row>' +
      '<row r="6"><c r="A6" cm="2"><f t="array" ref="A6:B7">_xlfn.SEQUENCE(2,2)</f><v>1</v></c><c r="B6"><v>2</v></c></row>' +
      '<row r="7"><c r="A7"><v>3</v></c><c r="B7"><v>4</v></c><c r="C7" t="e"><v>#DIV/0!</v></c></row>' +
      '<row r="8"><c r="A8" s="3"><f>_xldudf_mold_seat_force("10 kN",draft,0.15)</f><v>31116.8</v></c><c r="B8"><f t="array" ref="B8">SUM(A1:A3*2)</f><v>7</v></c></row>\n' +
      '</sheetData>' +
      '<mergeCells count="1"><mergeCell ref="A1:B1"/></mergeCells>' +
      '<conditionalFormatting sqref="A3:A9 C3"><cfRule type="cellIs" dxfId="0" priority="2" operator="lessThan"><formula>0</formula></cfRule><cfRule type="dataBar" priority="1"/></conditionalFormatting>' +
      '<dataValidations count="2"><dataValidation type="list" allowBlank="1" sqref="C1"><formula1>"in, mm"</formula1></dataValidation>' +
      '<dataValidation type="list" sqref="C2"><formula1>Lists!$A$1:$A$2</formula1></dataValidation></dataValidations>' +
      '<hyperlinks><hyperlink ref="A2" r:id="rId3"/><hyperlink ref="A3" location="Lists!A1"/></hyperlinks>' +
      '<pageMargins left="0.7" right="0.7" top="0.75" bottom="0.75" header="0.3" footer="0.3"/><drawing r:id="rId1"/>' +
      '<tableParts count="1"><tablePart r:id="rId2"/></tableParts>' +
      '<extLst><ext uri="{05C60535-1F16-4fd2-B633-F4F36F0B64E0}"><x14:sparklineGroups/></ext><ext uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}"><x14:dataValidations xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main"><x14:dataValidation type="list"><x14:formula1><xm:f>Lists!$A$2:$A$3</xm:f></x14:formula1><xm:sqref>C3</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst></worksheet>',
    'xl/worksheets/_rels/sheet1.xml.rels': rels(
      ['drawing', '../drawings/drawing1.xml'],
      ['table', '../tables/table1.xml'],
      ['hyperlink', 'https://example.org/seat'],
    ),
    'xl/drawings/drawing1.xml':
      '<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"/>',
    'xl/drawings/_rels/drawing1.xml.rels': rels(['chart', '../charts/chart1.xml']),
    'xl/charts/chart1.xml':
      '<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:chart/></c:chartSpace>',
    'xl/tables/table1.xml': `<table xmlns="${MAIN}" id="1" name="Stock" displayName="Stock" ref="E1:F3"><tableColumns count="2"><tableColumn id="1" name="Size"/><tableColumn id="2" name="Price"/></tableColumns></table>`,
    'xl/worksheets/sheet2.xml': `<worksheet xmlns="${MAIN}"><sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData></worksheet>`,
  };
}
