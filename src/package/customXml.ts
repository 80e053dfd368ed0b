/** Custom XML parts (ECMA-376 part 1, 22.5): data that travels in the workbook and that nothing shows. */
import { workbookPart } from './open';
import type { EditableParts, Parts } from './relationships';
import {
  declareType,
  freePart,
  readText,
  relate,
  relationshipPart,
  relationshipsOf,
  removePart,
  writeText,
} from './relationships';
import { parseXml } from './xml';

const PROPERTIES = 'http://schemas.openxmlformats.org/officeDocument/2006/customXml';
const PROPERTIES_TYPE = 'application/vnd.openxmlformats-officedocument.customXmlProperties+xml';

/** The text of the part whose root element is in the namespace. */
export function readCustomXml(workbook: { readonly parts: Parts }, namespace: string): string | undefined {
  const part = partOf(workbook.parts, namespace);
  return part === undefined ? undefined : readText(workbook.parts, part);
}

export function writeCustomXml(parts: EditableParts, namespace: string, xml: string): void {
  if (rootNamespace(xml, 'custom XML') !== namespace)
    throw new Error(`The root element is not in the namespace ${namespace}.`);
  const present = partOf(parts, namespace);
  if (present !== undefined) {
    writeText(parts, present, xml);
    return;
  }
  const part = freePart(parts, 'customXml/item', '.xml');
  writeText(parts, part, xml);
  relate(parts, workbookPart(parts), 'customXml', part);
  const properties = freePart(parts, 'customXml/itemProps', '.xml');
  writeText(
    parts,
    properties,
    `<ds:datastoreItem ds:itemID="${itemId(namespace)}" xmlns:ds="${PROPERTIES}">` +
      `<ds:schemaRefs><ds:schemaRef ds:uri="${namespace}"/></ds:schemaRefs></ds:datastoreItem>`,
  );
  declareType(parts, properties, PROPERTIES_TYPE);
  relate(parts, part, 'customXmlProps', properties);
}

export function removeCustomXml(parts: EditableParts, namespace: string): void {
  const part = partOf(parts, namespace);
  if (part === undefined) return;
  for (const { target } of relationshipsOf(parts, part)) removePart(parts, part, target);
  parts.delete(relationshipPart(part));
  removePart(parts, workbookPart(parts), part);
}

function partOf(parts: Parts, namespace: string): string | undefined {
  return relationshipsOf(parts, workbookPart(parts)).find(({ kind, target, external }) => {
    const xml = kind === 'customXml' && !external ? readText(parts, target) : undefined;
    return xml !== undefined && rootNamespace(xml, target) === namespace;
  })?.target;
}

function rootNamespace(xml: string, part: string): string | undefined {
  const { prefix, attributes } = parseXml(xml, part);
  return attributes[prefix === '' ? 'xmlns' : `xmlns:${prefix.slice(0, -1)}`];
}

/** Each item needs an id of its own; drawn from the namespace, so that the same workbook gives the same file. */
function itemId(namespace: string): string {
  let digits = '';
  for (let salt = 0; digits.length < 32; salt++) {
    let hash = 0x811c9dc5 ^ salt;
    for (const character of namespace) hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
    digits += (hash >>> 0).toString(16).toUpperCase().padStart(8, '0');
  }
  return `{${[0, 8, 12, 16, 20].map((at, i, all) => digits.slice(at, all[i + 1] ?? 32)).join('-')}}`;
}
