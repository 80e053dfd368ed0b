/** Properties of a file that its programs name themselves and others keep (ECMA-376 part 1, 22.3, custom properties). */
import type { Workbook } from './model';
import type { EditableParts, Parts } from './relationships';
import { declareType, readText, relate, relatedPart, writeText } from './relationships';
import { appendChild, applyEdits, child, childrenOf, encodeText, escapeXml, parseXml } from './xml';
import type { XmlElement } from './xml';

const CUSTOM = 'http://schemas.openxmlformats.org/officeDocument/2006/custom-properties';
const TYPES = 'http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes';
const TYPE = 'application/vnd.openxmlformats-officedocument.custom-properties+xml';
/** The same for every property that a program names itself. */
const FORMAT = '{D5CDD505-2E9C-101B-9397-08002B2CF9AE}';
/** Numbers below are taken. */
const FIRST_NUMBER = 2;

const partOf = (parts: Parts): string | undefined => relatedPart(parts, '', 'custom-properties');

export function readCustomProperty({ parts }: Pick<Workbook, 'parts'>, name: string): string | undefined {
  const part = partOf(parts);
  const xml = part === undefined ? undefined : readText(parts, part);
  if (part === undefined || xml === undefined) return undefined;
  const property = find(parseXml(xml, part), name);
  return property && child(property, 'lpwstr')?.text;
}

/** The workbook with a text as one of its properties. */
export function withCustomProperty(workbook: Workbook, name: string, text: string): Workbook {
  if (readCustomProperty(workbook, name) === text) return workbook;
  const parts: EditableParts = new Map(workbook.parts);
  let part = partOf(parts);
  if (part === undefined || !parts.has(part)) {
    part = 'docProps/custom.xml';
    writeText(parts, part, `<Properties xmlns="${CUSTOM}"></Properties>`);
    declareType(parts, part, TYPE);
    relate(parts, '', 'custom-properties', part);
  }
  const xml = readText(parts, part) ?? '';
  const root = parseXml(xml, part);
  const old = find(root, name);
  const numbers = childrenOf(root, 'property').map(({ attributes }) => Number(attributes['pid']));
  const number = Math.max(FIRST_NUMBER - 1, ...numbers) + 1;
  const element =
    `<property xmlns="${CUSTOM}" fmtid="${FORMAT}" pid="${number}" name="${escapeXml(name)}">` +
    `<vt:lpwstr xmlns:vt="${TYPES}">${encodeText(text)}</vt:lpwstr></property>`;
  const edit =
    old === undefined
      ? appendChild(xml, root, element)
      : { start: old.start, end: old.closeEnd, text: element };
  writeText(parts, part, applyEdits(xml, [edit]));
  return { ...workbook, parts };
}

const find = (root: XmlElement, name: string): XmlElement | undefined =>
  childrenOf(root, 'property').find(({ attributes }) => attributes['name'] === name);
