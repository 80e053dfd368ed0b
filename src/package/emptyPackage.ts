import { WORKBOOK_TYPE } from './open';
import type { EditableParts } from './relationships';
import { TYPES, declareType, relate, writeText } from './relationships';
import { escapeXml } from './xml';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml.';

const PLAIN = { name: 'Calibri', size: 11 };

/**
 * A workbook without sheets, to which they are added. The version of the calculation is that of today's Excel
 * (value from memory): an older one, or none, makes Excel calculate everything at opening, and where the add-in is
 * missing our results would be lost.
 */
export function emptyPackage(font = PLAIN): EditableParts {
  const parts: EditableParts = new Map();
  writeText(
    parts,
    TYPES,
    '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">' +
      '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
      '<Default Extension="xml" ContentType="application/xml"/></Types>',
  );
  const workbook = 'xl/workbook.xml';
  writeText(
    parts,
    workbook,
    `<workbook xmlns="${MAIN}"><workbookPr/><bookViews><workbookView xWindow="0" yWindow="0" windowWidth="24000" windowHeight="12000"/></bookViews>` +
      '<sheets></sheets><calcPr calcId="191029"/></workbook>',
  );
  declareType(parts, workbook, WORKBOOK_TYPE);
  relate(parts, '', 'officeDocument', workbook);
  addStylesPart(parts, workbook, font);
  return parts;
}

/** The smallest list of styles, for a workbook that has none. */
export function addStylesPart(parts: EditableParts, workbook: string, font = PLAIN): string {
  const styles = 'xl/styles.xml';
  writeText(
    parts,
    styles,
    `<styleSheet xmlns="${MAIN}">` +
      `<fonts count="1"><font><sz val="${font.size}"/><name val="${escapeXml(font.name)}"/></font></fonts>` +
      '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
      '<borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>' +
      '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>' +
      '<cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs>' +
      '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>',
  );
  declareType(parts, styles, `${SPREADSHEET}styles+xml`);
  relate(parts, workbook, 'styles', styles);
  return styles;
}
