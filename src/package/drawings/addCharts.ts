/** Charts written into the file: chart part, drawing part, and all that ties them to the sheet. */
import { parseArea, type Area } from '../../cells/address';
import { readReference } from '../../cells/reference';
import { CellError } from '../../cells/value';
import { readTheme } from '../colors';
import { insertOrdered } from '../metadata';
import { cellFinder, type Workbook } from '../model';
import { workbookPart } from '../open';
import { listSheets } from '../read';
import { behind } from '../sheetOrder';
import {
  declareType,
  freePart,
  readText,
  relate,
  relatedPart,
  writeText,
  type EditableParts,
} from '../relationships';
import { appendChild, applyEdits, descendants, escapeXml, numeric, parseXml } from '../xml';
import { chartXml, type Cached, type ChartDescription } from './writeChart';

const CHART_TYPE = 'application/vnd.openxmlformats-officedocument.drawingml.chart+xml';
const DRAWING_TYPE = 'application/vnd.openxmlformats-officedocument.drawing+xml';
const SHEET_DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing';
const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006/main';
const CHART = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const DOCUMENT = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
/** Adds charts to a sheet of the parts; the values beside their references are those of the workbook. */
export function addChartParts(
  parts: EditableParts,
  workbook: Workbook,
  sheet: string,
  charts: readonly ChartDescription[],
): void {
  const book = workbookPart(parts);
  const listed = listSheets(parts, book, parseXml(readText(parts, book) ?? '', book));
  const part = listed.find(({ name }) => name === sheet)?.part;
  if (part === undefined)
    throw new Error(`The workbook has no sheet "${sheet}" with cells to put a chart over.`);
  const drawing = drawingOf(parts, part);
  const themePart = relatedPart(parts, book, 'theme');
  const around = {
    cached: cacheOf(workbook),
    ...(themePart !== undefined && { theme: readTheme(parts, themePart) }),
  };
  for (const chart of charts) {
    const area = parseArea(chart.over);
    if (area === undefined) throw new Error(`A chart stands over "${chart.over}", which is no area.`);
    const chartPart = freePart(parts, 'xl/charts/chart', '.xml');
    writeText(parts, chartPart, chartXml(chart, around));
    declareType(parts, chartPart, CHART_TYPE);
    const id = relate(parts, drawing, 'chart', chartPart);
    const xml = readText(parts, drawing) ?? '';
    const root = parseXml(xml, drawing);
    const number =
      Math.max(1, ...descendants(root, 'cNvPr').map((one) => numeric(one.attributes['id'], 1))) + 1;
    writeText(
      parts,
      drawing,
      applyEdits(xml, [appendChild(xml, root, anchorXml(area, number, id, chart.title))]),
    );
  }
}

/** The drawing part of a sheet, made where it has none. */
function drawingOf(parts: EditableParts, sheetPart: string): string {
  const present = relatedPart(parts, sheetPart, 'drawing');
  if (present !== undefined) return present;
  const part = freePart(parts, 'xl/drawings/drawing', '.xml');
  writeText(parts, part, `<xdr:wsDr xmlns:xdr="${SHEET_DRAWING}" xmlns:a="${DRAWING}"></xdr:wsDr>`);
  declareType(parts, part, DRAWING_TYPE);
  const id = relate(parts, sheetPart, 'drawing', part);
  const xml = readText(parts, sheetPart) ?? '';
  const root = parseXml(xml, sheetPart);
  const element = `<${root.prefix}drawing xmlns:r="${DOCUMENT}" r:id="${id}"/>`;
  writeText(parts, sheetPart, applyEdits(xml, [insertOrdered(xml, root, behind('drawing'), element)]));
  return part;
}

/** All namespaces stand here, since the drawing may have chosen other prefixes. */
function anchorXml({ top, left, bottom, right }: Area, number: number, id: string, title: string): string {
  const corner = (name: string, row: number, column: number): string =>
    `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
  return [
    `<xdr:twoCellAnchor xmlns:xdr="${SHEET_DRAWING}" xmlns:a="${DRAWING}" editAs="oneCell">`,
    corner('from', top, left),
    corner('to', bottom + 1, right + 1),
    '<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr>',
    `<xdr:cNvPr id="${number}" name="Chart ${number - 1}" descr="${escapeXml(title)}"/><xdr:cNvGraphicFramePr/>`,
    '</xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>',
    `<a:graphic><a:graphicData uri="${CHART}"><c:chart xmlns:c="${CHART}" xmlns:r="${DOCUMENT}" r:id="${id}"/></a:graphicData></a:graphic>`,
    '</xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>',
  ].join('');
}

function cacheOf(workbook: Workbook): Cached {
  return (reference) => {
    const read = readReference(reference);
    if (!read) throw new Error(`A chart reads "${reference}", which is no area of a sheet.`);
    const { sheet: name, area } = read;
    const sheet = workbook.sheets.find((one) => one.name.toLowerCase() === name.toLowerCase());
    if (!sheet) throw new Error(`A chart reads ${reference}, but the workbook has no sheet "${name}".`);
    const find = cellFinder(sheet);
    const values: (number | string | null)[] = [];
    for (let row = area.top; row <= area.bottom; row++)
      for (let column = area.left; column <= area.right; column++) {
        const value = find(row, column)?.value ?? null;
        const isPlain = typeof value === 'number' || typeof value === 'string' || value === null;
        values.push(isPlain ? value : value instanceof CellError ? null : String(value).toUpperCase());
      }
    return values;
  };
}
