import { DYNAMIC_TYPE, dynamicArrayMarks } from './readMetadata';
import type { EditableParts } from './relationships';
import { declareType, freePart, readText, relate, relatedPart, writeText } from './relationships';
import type { Edit, XmlElement } from './xml';
import { appendChild, applyEdits, child, childrenOf, parseXml, withAttributes } from './xml';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const DYNAMIC = 'http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray';
const CONTENT_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml';

const metadataType = (ns: string) =>
  `<metadataType${ns} name="${DYNAMIC_TYPE}" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" ` +
  `splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/>`;
const future = (ns: string) =>
  `<bk${ns}><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}" xmlns:xda="${DYNAMIC}">` +
  `<xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk>`;

/** The `cm` number to write at cells that hold a dynamic array; adds what the workbook lacks for it. */
export function ensureDynamicMark(parts: EditableParts, workbookPart: string): number {
  const present = relatedPart(parts, workbookPart, 'sheetMetadata');
  const part = present ?? freeName(parts);
  const empty = `<metadata xmlns="${MAIN}"></metadata>`;
  let xml = (present === undefined ? undefined : readText(parts, present)) ?? empty;
  const known = [...dynamicArrayMarks(parseXml(xml, part))][0];
  if (known !== undefined) return known;
  xml = addTo(
    xml,
    part,
    ['metadataTypes'],
    ['metadataStrings', 'mdxMetadata', 'futureMetadata', 'cellMetadata', 'valueMetadata', 'extLst'],
    metadataType,
  );
  const type =
    childrenOf(child(parseXml(xml, part), 'metadataTypes'), 'metadataType').findIndex(
      (one) => one.attributes['name'] === DYNAMIC_TYPE,
    ) + 1;
  xml = addTo(
    xml,
    part,
    ['futureMetadata', DYNAMIC_TYPE],
    ['cellMetadata', 'valueMetadata', 'extLst'],
    future,
  );
  const flags = childrenOf(parseXml(xml, part), 'futureMetadata').find(
    (one) => one.attributes['name'] === DYNAMIC_TYPE,
  );
  const index = childrenOf(flags, 'bk').length - 1;
  xml = addTo(
    xml,
    part,
    ['cellMetadata'],
    ['valueMetadata', 'extLst'],
    (ns) => `<bk${ns}><rc t="${type}" v="${index}"/></bk>`,
  );
  writeText(parts, part, xml);
  if (present === undefined) {
    declareType(parts, part, CONTENT_TYPE);
    relate(parts, workbookPart, 'sheetMetadata', part);
  }
  const mark = [...dynamicArrayMarks(parseXml(xml, part))][0];
  if (mark === undefined) throw new Error('The dynamic array mark could not be added to the workbook.');
  return mark;
}

function freeName(parts: EditableParts): string {
  return parts.has('xl/metadata.xml') ? freePart(parts, 'xl/metadata', '.xml') : 'xl/metadata.xml';
}

/** Adds one entry to a counted list, made where it is missing, before the first of the lists that must follow it. */
function addTo(
  xml: string,
  part: string,
  [list = '', name]: string[],
  followers: string[],
  entry: (ns: string) => string,
): string {
  const root = parseXml(xml, part);
  // A file whose elements carry a prefix gets entries that say their namespace themselves.
  const ns =
    root.prefix === '' ? '' : ` xmlns="${root.attributes[`xmlns:${root.prefix.slice(0, -1)}`] ?? MAIN}"`;
  const present = childrenOf(root, list).find((one) => name === undefined || one.attributes['name'] === name);
  if (present !== undefined) {
    const isType =
      list === 'metadataTypes' &&
      childrenOf(present, 'metadataType').some((one) => one.attributes['name'] === DYNAMIC_TYPE);
    return isType ? xml : applyEdits(xml, growList(xml, present, entry(ns)));
  }
  const named = name === undefined ? '' : ` name="${name}"`;
  return applyEdits(xml, [
    insertOrdered(xml, root, followers, `<${list}${ns}${named} count="1">${entry('')}</${list}>`),
  ]);
}

/** A new last entry, and the count put right. */
export function growList(xml: string, list: XmlElement, ...entries: readonly string[]): Edit[] {
  const count = String(list.children.length + entries.length);
  if (list.selfClosing) {
    const open = withAttributes({ ...list, selfClosing: false }, { count });
    return [
      { start: list.start, end: list.end, text: `${open}${entries.join('')}</${list.prefix}${list.name}>` },
    ];
  }
  return [
    { start: list.start, end: list.end, text: withAttributes(list, { count }) },
    appendChild(xml, list, entries.join('')),
  ];
}

/** An element put before the first of those that the format wants behind it. */
export function insertOrdered(
  xml: string,
  root: XmlElement,
  followers: readonly string[],
  text: string,
): Edit {
  const next = root.children.find((one) => followers.includes(one.name));
  return next === undefined ? appendChild(xml, root, text) : { start: next.start, end: next.start, text };
}
