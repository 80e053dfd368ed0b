/** The threads of a package: which part is of which kind, and which part refers to which (ECMA-376 part 2). */
import { appendChild, applyEdits, childrenOf, decodePart, encodePart, escapeXml, parseXml } from './xml';

export type Parts = ReadonlyMap<string, Uint8Array>;
export type EditableParts = Map<string, Uint8Array>;

export interface Relationship {
  readonly id: string;
  /** The last step of the type's address, for example `worksheet`: the strict and the usual form differ before it. */
  readonly kind: string;
  /** Part name for inner targets, address for outer ones. */
  readonly target: string;
  readonly external: boolean;
}

export const TYPES = '[Content_Types].xml';
const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const RELATIONSHIPS = 'http://schemas.openxmlformats.org/package/2006/relationships';
const DOCUMENT = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

export function readText(parts: Parts, name: string): string | undefined {
  const bytes = parts.get(name);
  return bytes === undefined ? undefined : decodePart(bytes, name);
}

export function writeText(parts: EditableParts, name: string, xml: string): void {
  parts.set(name, encodePart(xml.startsWith('<?xml') || xml.startsWith('\ufeff') ? xml : DECLARATION + xml));
}

/** The part that holds the relationships of a part; of the package itself for the empty name. */
export function relationshipPart(part: string): string {
  const slash = part.lastIndexOf('/') + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

/** A target is relative to the folder of its source, or counts from the top with a leading slash. */
function resolveTarget(part: string, target: string): string {
  if (target.startsWith('/')) return target.slice(1);
  const steps = part.split('/').slice(0, -1);
  for (const step of target.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '.') steps.push(step);
  }
  return steps.join('/');
}

/** Part names do not tell capitals from small letters, and some programs mix them. */
function existing(parts: Parts, name: string): string {
  if (parts.has(name)) return name;
  return [...parts.keys()].find((one) => one.toLowerCase() === name.toLowerCase()) ?? name;
}

export function relationshipsOf(parts: Parts, part: string): Relationship[] {
  const name = relationshipPart(part);
  const xml = readText(parts, name);
  if (xml === undefined) return [];
  return childrenOf(parseXml(xml, name), 'Relationship').map(({ attributes }) => {
    const external = attributes['TargetMode'] === 'External';
    const target = attributes['Target'] ?? '';
    return {
      id: attributes['Id'] ?? '',
      kind: (attributes['Type'] ?? '').split('/').at(-1) ?? '',
      target: external ? target : existing(parts, resolveTarget(part, target)),
      external,
    };
  });
}

export function relatedPart(parts: Parts, part: string, kind: string): string | undefined {
  return relationshipsOf(parts, part).find((one) => one.kind === kind && !one.external)?.target;
}

/** Adds a relationship and gives its id. `kind` is a last step as in `Relationship`, or a whole address. */
export function relate(
  parts: EditableParts,
  part: string,
  kind: string,
  target: string,
  external = false,
): string {
  const name = relationshipPart(part);
  const taken = new Set(relationshipsOf(parts, part).map((one) => one.id));
  let number = taken.size + 1;
  while (taken.has(`rId${number}`)) number++;
  const id = `rId${number}`;
  const type = kind.includes('/') ? kind : `${DOCUMENT}/${kind}`;
  const where = external ? `${escapeXml(target)}" TargetMode="External` : `/${escapeXml(target)}`;
  const xml = readText(parts, name) ?? `<Relationships xmlns="${RELATIONSHIPS}"></Relationships>`;
  const root = parseXml(xml, name);
  const text = `<${root.prefix}Relationship Id="${id}" Type="${type}" Target="${where}"/>`;
  writeText(parts, name, applyEdits(xml, [appendChild(xml, root, text)]));
  return id;
}

export function contentType(parts: Parts, part: string): string | undefined {
  const root = parseXml(readText(parts, TYPES) ?? '<Types/>', TYPES);
  const named = childrenOf(root, 'Override').find((one) => samePart(one.attributes['PartName'], part));
  if (named !== undefined) return named.attributes['ContentType'];
  const extension = part.slice(part.lastIndexOf('.') + 1).toLowerCase();
  return childrenOf(root, 'Default').find((one) => one.attributes['Extension']?.toLowerCase() === extension)
    ?.attributes['ContentType'];
}

export function declareType(parts: EditableParts, part: string, type: string): void {
  editTypes(parts, (xml, root) => [
    appendChild(xml, root, `<${root.prefix}Override PartName="/${escapeXml(part)}" ContentType="${type}"/>`),
  ]);
}

/** For kinds of parts told by the end of their name. */
export function declareDefaultType(parts: EditableParts, extension: string, type: string): void {
  editTypes(parts, (_, root) => {
    const known = childrenOf(root, 'Default').some(
      (one) => one.attributes['Extension']?.toLowerCase() === extension,
    );
    const text = `<${root.prefix}Default Extension="${extension}" ContentType="${type}"/>`;
    return known ? [] : [{ start: root.end, end: root.end, text }];
  });
}

/** Takes a part away together with its kind and with what its owner says of it. */
export function removePart(parts: EditableParts, owner: string, part: string): void {
  parts.delete(part);
  editTypes(parts, (_, root) =>
    childrenOf(root, 'Override')
      .filter((one) => samePart(one.attributes['PartName'], part))
      .map((one) => ({ start: one.start, end: one.closeEnd, text: '' })),
  );
  const name = relationshipPart(owner);
  const xml = readText(parts, name);
  if (xml === undefined) return;
  const edits = childrenOf(parseXml(xml, name), 'Relationship')
    .filter(
      (one) =>
        one.attributes['TargetMode'] !== 'External' &&
        resolveTarget(owner, one.attributes['Target'] ?? '') === part,
    )
    .map((one) => ({ start: one.start, end: one.closeEnd, text: '' }));
  writeText(parts, name, applyEdits(xml, edits));
}

/** A part name not yet taken: `xl/comments` and `.xml` give xl/comments1.xml, xl/comments2.xml, … */
export function freePart(parts: Parts, before: string, after: string): string {
  const taken = new Set([...parts.keys()].map((name) => name.toLowerCase()));
  let number = 1;
  while (taken.has(`${before}${number}${after}`.toLowerCase())) number++;
  return `${before}${number}${after}`;
}

function editTypes(
  parts: EditableParts,
  make: (xml: string, root: ReturnType<typeof parseXml>) => ReturnType<typeof appendChild>[],
) {
  const xml =
    readText(parts, TYPES) ??
    '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"></Types>';
  writeText(parts, TYPES, applyEdits(xml, make(xml, parseXml(xml, TYPES))));
}

const samePart = (declared: string | undefined, part: string) =>
  declared?.toLowerCase() === `/${part}`.toLowerCase();
