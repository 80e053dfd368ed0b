/** Title and the like (ECMA-376 part 2, core properties). Who made or changed the file is never written. */
import type { Properties } from './description';
import type { EditableParts } from './relationships';
import { declareType, readText, relate, relatedPart, writeText } from './relationships';
import { appendChild, applyEdits, child, encodeText, parseXml } from './xml';

const CORE = 'http://schemas.openxmlformats.org/package/2006/metadata/core-properties';
const KIND = 'http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties';
const TYPE = 'application/vnd.openxmlformats-package.core-properties+xml';
const DUBLIN_CORE = 'http://purl.org/dc/elements/1.1/';

export function writeProperties(parts: EditableParts, properties: Properties): void {
  let part = relatedPart(parts, '', 'core-properties');
  if (part === undefined) {
    part = 'docProps/core.xml';
    writeText(parts, part, `<cp:coreProperties xmlns:cp="${CORE}"></cp:coreProperties>`);
    declareType(parts, part, TYPE);
    relate(parts, '', KIND, part);
  }
  for (const [name, value] of Object.entries(properties) as [keyof Properties, string | undefined][]) {
    if (value === undefined) continue;
    const xml = readText(parts, part) ?? '';
    const root = parseXml(xml, part);
    const old = child(root, name);
    const element =
      name === 'keywords'
        ? `<cp:keywords xmlns:cp="${CORE}">${encodeText(value)}</cp:keywords>`
        : `<dc:${name} xmlns:dc="${DUBLIN_CORE}">${encodeText(value)}</dc:${name}>`;
    const edit =
      old === undefined
        ? appendChild(xml, root, element)
        : { start: old.start, end: old.closeEnd, text: element };
    writeText(parts, part, applyEdits(xml, [edit]));
  }
}
