/**
 * Cell notes. Each needs two things in the file: its text in a comments part, and a box to show it in, kept in a
 * drawing of the old kind. Notes are written without an author: a workbook that is passed on names nobody.
 */
import { cellAddress } from '../cells/address';
import { insertOrdered } from './metadata';
import type { Edit, XmlElement } from './xml';
import type { EditableParts } from './relationships';
import { behind } from './sheetOrder';
import {
  declareDefaultType,
  declareType,
  freePart,
  readText,
  relate,
  relatedPart,
  relationshipsOf,
  writeText,
} from './relationships';
import {
  appendChild,
  applyEdits,
  child,
  childrenOf,
  descendants,
  encodePart,
  numeric,
  parseXml,
  prefixed,
  textElement,
} from './xml';

export interface NoteChange {
  readonly row: number;
  readonly column: number;
  /** `null` takes the note away. */
  readonly text: string | null;
}

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const COMMENTS_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml';
const DRAWING_TYPE = 'application/vnd.openxmlformats-officedocument.vmlDrawing';
const DOCUMENT = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** Columns that a box is wide, and letters that go into one of its lines. */
const BOX_COLUMNS = 3;
const LETTERS_A_LINE = 34;

export function changeNotes(parts: EditableParts, sheetPart: string, changes: readonly NoteChange[]): void {
  const comments = relatedPart(parts, sheetPart, 'comments') ?? newComments(parts, sheetPart);
  const known = changeComments(parts, comments, changes);
  const drawing = drawingOf(parts, sheetPart) ?? newDrawing(parts, sheetPart);
  changeBoxes(parts, drawing, changes, known);
}

/** Gives the places that had a note before. */
function changeComments(parts: EditableParts, part: string, changes: readonly NoteChange[]): Set<string> {
  const xml = readText(parts, part) ?? '';
  const root = parseXml(xml, part);
  const list = child(root, 'commentList');
  const present = childrenOf(list, 'comment');
  const p = root.prefix;
  const edits: Edit[] = [];
  const author = namelessAuthor(xml, root, edits);
  const added: { readonly row: number; readonly column: number; readonly xml: string }[] = [];
  for (const { row, column, text } of changes) {
    const ref = cellAddress(row, column);
    const old = present.find((one) => one.attributes['ref'] === ref);
    const comment =
      text === null
        ? ''
        : `<${p}comment ref="${ref}" authorId="${author}"><${p}text>${textElement(text, p)}</${p}text></${p}comment>`;
    if (old !== undefined) edits.push({ start: old.start, end: old.closeEnd, text: comment });
    else if (text !== null) added.push({ row, column, xml: comment });
  }
  added.sort((a, b) => a.row - b.row || a.column - b.column);
  if (added.length > 0) {
    const all = added.map((one) => one.xml).join('');
    edits.push(
      list === undefined
        ? appendChild(xml, root, `<${p}commentList>${all}</${p}commentList>`)
        : appendChild(xml, list, all),
    );
  }
  writeText(parts, part, applyEdits(xml, edits));
  return new Set(present.map((one) => one.attributes['ref'] ?? ''));
}

/** Number of the author without a name, added where the file has none. */
function namelessAuthor(xml: string, root: XmlElement, edits: Edit[]): number {
  const p = root.prefix;
  const list = child(root, 'authors');
  const known = list?.children.findIndex((one) => one.text === '') ?? -1;
  if (known >= 0) return known;
  if (list === undefined)
    edits.push(insertOrdered(xml, root, ['commentList'], `<${p}authors><${p}author/></${p}authors>`));
  else edits.push(appendChild(xml, list, `<${p}author/>`));
  return list?.children.length ?? 0;
}

function newComments(parts: EditableParts, sheetPart: string): string {
  const part = freePart(parts, 'xl/comments', '.xml');
  writeText(
    parts,
    part,
    `<comments xmlns="${MAIN}"><authors><author/></authors><commentList></commentList></comments>`,
  );
  declareType(parts, part, COMMENTS_TYPE);
  relate(parts, sheetPart, 'comments', part);
  return part;
}

function drawingOf(parts: EditableParts, sheetPart: string): string | undefined {
  const legacy = child(parseXml(readText(parts, sheetPart) ?? '', sheetPart), 'legacyDrawing');
  const id = legacy === undefined ? undefined : prefixed(legacy.attributes, 'id');
  return relationshipsOf(parts, sheetPart).find((one) => one.id === id)?.target;
}

function newDrawing(parts: EditableParts, sheetPart: string): string {
  const part = freePart(parts, 'xl/drawings/vmlDrawing', '.vml');
  parts.set(part, encodePart(EMPTY_DRAWING));
  declareDefaultType(parts, 'vml', DRAWING_TYPE);
  const id = relate(parts, sheetPart, 'vmlDrawing', part);
  const xml = readText(parts, sheetPart) ?? '';
  const root = parseXml(xml, sheetPart);
  const reference = `<${root.prefix}legacyDrawing xmlns:r="${DOCUMENT}" r:id="${id}"/>`;
  writeText(
    parts,
    sheetPart,
    applyEdits(xml, [insertOrdered(xml, root, behind('legacyDrawing'), reference)]),
  );
  return part;
}

const EMPTY_DRAWING =
  '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel">' +
  '<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="1"/></o:shapelayout>' +
  '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">' +
  '<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype></xml>';

function changeBoxes(
  parts: EditableParts,
  part: string,
  changes: readonly NoteChange[],
  known: ReadonlySet<string>,
): void {
  const xml = readText(parts, part) ?? EMPTY_DRAWING;
  const root = parseXml(xml, part);
  const shapes = descendants(root, 'shape');
  const removed = changes.filter((one) => one.text === null);
  const edits = shapes
    .filter((shape) => {
      const data = child(shape, 'ClientData');
      const row = numeric(child(data, 'Row')?.text, -1);
      const column = numeric(child(data, 'Column')?.text, -1);
      return (
        data?.attributes['ObjectType'] === 'Note' &&
        removed.some((one) => one.row === row && one.column === column)
      );
    })
    .map((shape) => ({ start: shape.start, end: shape.closeEnd, text: '' }));
  // Numbers of shapes count from 1025 in the first block of a drawing; any free one will do.
  let number = shapes.reduce(
    (highest, shape) => Math.max(highest, numeric(shape.attributes['id']?.replace('_x0000_s', ''), 0)),
    1024,
  );
  const boxes = changes
    .filter((one) => one.text !== null && !known.has(cellAddress(one.row, one.column)))
    .map((one) => box(one, ++number))
    .join('');
  if (boxes !== '') edits.push(appendChild(xml, root, boxes));
  if (edits.length > 0) parts.set(part, encodePart(applyEdits(xml, edits)));
}

function box({ row, column, text }: NoteChange, number: number): string {
  const lines = (text ?? '')
    .split('\n')
    .reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / LETTERS_A_LINE)), 1);
  const top = Math.max(0, row - 1);
  const anchor = [column + 1, 15, top, 10, column + 1 + BOX_COLUMNS, 15, top + Math.max(3, lines), 4].join(
    ', ',
  );
  return (
    `<v:shape xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" ` +
    `xmlns:x="urn:schemas-microsoft-com:office:excel" id="_x0000_s${number}" type="#_x0000_t202" ` +
    `style="position:absolute;margin-left:60pt;margin-top:2pt;width:170pt;height:60pt;z-index:1;visibility:hidden" ` +
    `fillcolor="#ffffe1" o:insetmode="auto"><v:fill color2="#ffffe1"/><v:shadow on="t" color="black" obscured="t"/>` +
    `<v:path o:connecttype="none"/><v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox>` +
    `<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${anchor}</x:Anchor>` +
    `<x:AutoFill>False</x:AutoFill><x:Row>${row}</x:Row><x:Column>${column}</x:Column></x:ClientData></v:shape>`
  );
}
