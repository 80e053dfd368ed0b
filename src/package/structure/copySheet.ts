/** A sheet copied with all that belongs to it: rules, lists, print set-up, pictures, charts, notes, tables, names. */
import { insertOrdered } from '../metadata';
import { AFTER_NAMES } from '../newSheets';
import { workbookPart } from '../open';
import {
  contentType,
  declareType,
  freePart,
  readText,
  relate,
  relationshipPart,
  relationshipsOf,
  writeText,
  type EditableParts,
} from '../relationships';
import {
  applyEdits,
  child,
  childrenOf,
  descendants,
  escapeXml,
  numeric,
  parseXml,
  prefixed,
  withAttributes,
  type Edit,
} from '../xml';
import { CannotChange } from './acts';
import { rewriteFormula, type Rewriting } from './formula';
import { checkSheetName, indexOf, placeEdits, rewriteFormulasIn, sheetsOf } from './sheets';
import { tablesOf } from './tableParts';

/** Parts that a copy shares with the original: nothing in them speaks of the sheet. */
const SHARED = new Set([
  'image',
  'printerSettings',
  'oleObject',
  'package',
  'pivotCacheDefinition',
  'person',
]);
const REFUSED: Readonly<Record<string, string>> = {
  slicer: 'a slicer',
  timeline: 'a timeline',
  queryTable: 'a query',
};

export function copySheet(parts: EditableParts, original: string, name: string): void {
  const sheets = sheetsOf(parts);
  const at = indexOf(sheets, original);
  const source = sheets[at]?.part;
  if (source === undefined) throw new CannotChange(`"${original}" holds a chart alone and cannot be copied.`);
  checkSheetName(sheets, name);
  const part = copyPart(parts, source);
  freshen(parts, part);
  freshenThreads(parts, part);
  const renamed = renameTables(parts, part);
  const book = workbookPart(parts);
  listCopy(parts, book, part, at, name);
  const isOriginal = (sheet: string): boolean => sheet.toLowerCase() === original.toLowerCase();
  const how: Rewriting = {
    from: original,
    to: name,
    area: (sheet, area) => ({ ...area, sheet: isOriginal(sheet) ? name : sheet }),
    word: (text) => renamed.get(text.toLowerCase()) ?? text,
  };
  rewriteFormulasIn(parts, part, how);
  copyNames(parts, book, at, how, original);
}

/** Copies a part and what belongs to it alone; gives the copy's name. */
function copyPart(parts: EditableParts, part: string): string {
  const bytes = parts.get(part);
  const named = /^(.*?)\d*(\.[^./]+)$/.exec(part);
  if (!bytes || !named) throw new CannotChange(`The part ${part} of the file is missing.`);
  const copy = freePart(parts, named[1] ?? part, named[2] ?? '');
  parts.set(copy, bytes);
  const type = contentType(parts, part);
  if (type !== undefined && contentType(parts, copy) !== type) declareType(parts, copy, type);
  const xml = readText(parts, relationshipPart(part));
  if (xml === undefined) return copy;
  const targets = new Map(relationshipsOf(parts, part).map((one) => [one.id, one]));
  const edits = childrenOf(parseXml(xml, relationshipPart(part)), 'Relationship').map((one): Edit => {
    const related = targets.get(one.attributes['Id'] ?? '');
    if (!related || related.external) return { start: one.start, end: one.start, text: '' };
    const what = REFUSED[related.kind];
    if (what !== undefined)
      throw new CannotChange(`The sheet holds ${what}, which cannot be copied; take it off first.`);
    const target =
      SHARED.has(related.kind) || !parts.has(related.target)
        ? related.target
        : copyPart(parts, related.target);
    return { start: one.start, end: one.end, text: withAttributes(one, { Target: `/${target}` }) };
  });
  writeText(parts, relationshipPart(copy), applyEdits(xml, edits));
  return copy;
}

/** The copy does not lie in front, and has no name in macros. */
function freshen(parts: EditableParts, part: string): void {
  const xml = readText(parts, part) ?? '';
  const root = parseXml(xml, part);
  const edits = [
    ...childrenOf(root, 'sheetPr').map((one) => ({ one, changes: { codeName: undefined } })),
    ...descendants(root, 'sheetView').map((one) => ({ one, changes: { tabSelected: undefined } })),
  ].map(({ one, changes }): Edit => ({ start: one.start, end: one.end, text: withAttributes(one, changes) }));
  writeText(parts, part, applyEdits(xml, edits));
}

const GUID = /\{([\da-f]{8}-[\da-f]{4}-[\da-f]{4}-[\da-f]{4}-)([\da-f]{12})\}/gi;

/** Threaded comments are known by numbers of their own, which the notes that stand for them name; people stay who they are. */
function freshenThreads(parts: EditableParts, part: string): void {
  const related = relationshipsOf(parts, part).filter(({ external }) => !external);
  const threads = related.filter(({ kind }) => kind === 'threadedComment').map(({ target }) => target);
  const own = new Set(
    threads.flatMap((thread) =>
      descendants(parseXml(readText(parts, thread) ?? '', thread), 'threadedComment').map(
        ({ attributes }) => attributes['id'] ?? '',
      ),
    ),
  );
  if (own.size === 0) return;
  const all = [...parts.keys()].filter((one) => one.includes('threadedComments/'));
  const taken = all.map((one) => readText(parts, one) ?? '').join('');
  const fresh = new Map(
    [...own].map((id) => {
      let next = id;
      while (taken.includes(next) && next.match(GUID))
        next = next.replace(
          GUID,
          (_, head: string, tail: string) =>
            `{${head}${((parseInt(tail, 16) + own.size) % 16 ** 12).toString(16).toUpperCase().padStart(12, '0')}}`,
        );
      return [id, next] as const;
    }),
  );
  const notes = related.filter(({ kind }) => kind === 'comments').map(({ target }) => target);
  for (const one of [...threads, ...notes]) {
    const xml = readText(parts, one) ?? '';
    writeText(
      parts,
      one,
      xml.replace(GUID, (id) => fresh.get(id) ?? id),
    );
  }
}

/** No two tables of a workbook share a name or a number. Gives old names in lower case with the new ones. */
function renameTables(parts: EditableParts, part: string): Map<string, string> {
  const taken = new Set<string>();
  let id = 0;
  for (const other of parts.keys()) {
    if (!/\/tables\/[^/]+\.xml$/.test(other)) continue;
    const { attributes } = parseXml(readText(parts, other) ?? '<table/>', other);
    taken.add((attributes['displayName'] ?? '').toLowerCase());
    id = Math.max(id, numeric(attributes['id'], 0));
  }
  const renamed = new Map<string, string>();
  for (const table of tablesOf(parts, part)) {
    const base = table.name.replace(/_\d+$/, '');
    let number = 2;
    while (taken.has(`${base}_${number}`.toLowerCase())) number++;
    const name = `${base}_${number}`;
    taken.add(name.toLowerCase());
    renamed.set(table.name.toLowerCase(), name);
    const xml = readText(parts, table.part) ?? '';
    const root = parseXml(xml, table.part);
    const changes = { id: String(++id), name, displayName: name };
    writeText(
      parts,
      table.part,
      applyEdits(xml, [{ start: root.start, end: root.end, text: withAttributes(root, changes) }]),
    );
  }
  return renamed;
}

/** Puts the copy behind the original. */
function listCopy(parts: EditableParts, book: string, part: string, at: number, name: string): void {
  const id = relate(parts, book, 'worksheet', part);
  const xml = readText(parts, book) ?? '';
  const root = parseXml(xml, book);
  const list = childrenOf(child(root, 'sheets'), 'sheet');
  const original = list[at];
  if (!original) return;
  const number = Math.max(...list.map((one) => numeric(one.attributes['sheetId'], 0))) + 1;
  const key =
    Object.keys(original.attributes).find((one) => prefixed({ [one]: 'x' }, 'id') !== undefined) ?? 'r:id';
  const tag = withAttributes(
    { ...original, selfClosing: true },
    { name, sheetId: String(number), [key]: id, state: undefined },
  );
  const edits = [
    { start: original.closeEnd, end: original.closeEnd, text: tag },
    ...placeEdits(root, (old) => (old > at ? old + 1 : old)),
  ];
  writeText(parts, book, applyEdits(xml, edits));
}

/** The names that the original alone knows, and those of the workbook that stand for its cells, belong to the copy too. */
function copyNames(parts: EditableParts, book: string, at: number, how: Rewriting, original: string): void {
  const xml = readText(parts, book) ?? '';
  const root = parseXml(xml, book);
  const list = child(root, 'definedNames');
  const names = childrenOf(list, 'definedName');
  const local = names.filter((one) => one.attributes['localSheetId'] === String(at));
  const known = new Set(local.map((one) => one.attributes['name']?.toLowerCase()));
  const ofWorkbook = names.filter(
    (one) =>
      one.attributes['localSheetId'] === undefined &&
      !known.has(one.attributes['name']?.toLowerCase()) &&
      rewriteFormula(one.text, { ...how, from: '', to: '' }) !== one.text,
  );
  const copies = [...local, ...ofWorkbook].map((one) => {
    const tag = withAttributes({ ...one, selfClosing: false }, { localSheetId: String(at + 1) });
    const text = rewriteFormula(one.text, { ...how, from: original });
    return `${tag}${escapeXml(text)}</${one.prefix}definedName>`;
  });
  if (copies.length === 0) return;
  const edit = list
    ? { start: list.closeStart, end: list.closeStart, text: copies.join('') }
    : insertOrdered(
        xml,
        root,
        AFTER_NAMES,
        `<${root.prefix}definedNames>${copies.join('')}</${root.prefix}definedNames>`,
      );
  writeText(parts, book, applyEdits(xml, [edit]));
}
