import { workbookPart } from './open';
import { listSheets } from './read';
import type { EditableParts } from './relationships';
import { readText, removePart, writeText } from './relationships';
import { applyEdits, child, childrenOf, parseXml, withAttributes, type Edit } from './xml';

/** Takes sheets away that nothing else refers to, with the names that only they know. */
export function removeSheetParts(parts: EditableParts, names: ReadonlySet<string>): void {
  const book = workbookPart(parts);
  const xml = readText(parts, book) ?? '';
  const root = parseXml(xml, book);
  const listed = listSheets(parts, book, root);
  const gone = listed.flatMap(({ name }, at) => (names.has(name) ? [at] : []));
  if (gone.length === 0 || gone.length === listed.length) return;
  const newIndex = (at: number): number => at - gone.filter((one) => one < at).length;
  const drop = (element: { readonly start: number; readonly closeEnd: number }): Edit => ({
    start: element.start,
    end: element.closeEnd,
    text: '',
  });
  const edits: Edit[] = childrenOf(child(root, 'sheets'), 'sheet').flatMap((sheet, at) =>
    gone.includes(at) ? [drop(sheet)] : [],
  );
  for (const name of childrenOf(child(root, 'definedNames'), 'definedName')) {
    const local = name.attributes['localSheetId'];
    if (local === undefined) continue;
    if (gone.includes(Number(local))) edits.push(drop(name));
    else if (newIndex(Number(local)) !== Number(local)) {
      const text = withAttributes(name, { localSheetId: String(newIndex(Number(local))) });
      edits.push({ start: name.start, end: name.end, text });
    }
  }
  const view = child(child(root, 'bookViews'), 'workbookView');
  const active = Number(view?.attributes['activeTab'] ?? 0);
  if (view && active > 0) {
    const activeTab = String(gone.includes(active) ? 0 : newIndex(active));
    edits.push({ start: view.start, end: view.end, text: withAttributes(view, { activeTab }) });
  }
  writeText(parts, book, applyEdits(xml, edits));
  for (const at of gone) {
    const part = listed[at]?.part;
    if (part !== undefined) removePart(parts, book, part);
  }
}
