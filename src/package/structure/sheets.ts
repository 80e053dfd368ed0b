/** Sheets renamed, moved, hidden and deleted. */
import { workbookPart } from '../open';
import { listSheets, type SheetPart } from '../read';
import { removeSheetParts } from '../removeSheets';
import { renameSheetParts } from '../renameSheets';
import { readText, relationshipsOf, removePart, writeText, type EditableParts } from '../relationships';
import { applyEdits, child, childrenOf, numeric, parseXml, withAttributes, type Edit } from '../xml';
import { CannotChange } from './acts';
import { rewriteChartSheets, rewriteDrawings, rewritePivotSources } from './drawingParts';
import type { Rewriting } from './formula';
import { rewriteNames } from './names';
import { readSheetXml } from './sheetCells';
import { rewriteFormulasOfSheet } from './sheetPart';
import { checkSlicers } from './slicers';
import { rewriteTableFormulas, tablesOf } from './tableParts';

export function sheetsOf(parts: EditableParts): SheetPart[] {
  const book = workbookPart(parts);
  return listSheets(parts, book, parseXml(readText(parts, book) ?? '', book));
}

export function indexOf(sheets: readonly SheetPart[], name: string): number {
  const at = sheets.findIndex((one) => one.name === name);
  if (at < 0) throw new CannotChange(`The workbook has no sheet "${name}".`);
  return at;
}

/** Every formula of the workbook, in all parts that hold one. */
export function rewriteAll(parts: EditableParts, how: (sheet: string) => Rewriting): void {
  const book = workbookPart(parts);
  const sheets = sheetsOf(parts);
  for (const { name, part } of sheets) {
    if (part !== undefined) rewriteFormulasIn(parts, part, how(name));
  }
  rewriteChartSheets(parts, book, how(sheets[0]?.name ?? ''));
  rewriteNames(
    parts,
    book,
    sheets.map(({ name }) => name),
    how,
  );
}

/** The formulas of one sheet: cells, rules, lists, links, tables, charts. */
export function rewriteFormulasIn(parts: EditableParts, part: string, how: Rewriting): void {
  const xml = readText(parts, part) ?? '';
  const changed = rewriteFormulasOfSheet(xml, readSheetXml(xml, part), how);
  if (changed !== xml) writeText(parts, part, changed);
  rewriteDrawings(parts, part, how);
  for (const table of tablesOf(parts, part)) rewriteTableFormulas(parts, table.part, how);
}

const FORBIDDEN = /[[\]:*?/\\]/;

/** The rules that spreadsheet programs hold names of sheets to. */
export function checkSheetName(sheets: readonly SheetPart[], name: string, own?: string): void {
  if (name.trim() === '') throw new CannotChange('A sheet needs a name.');
  if (name.length > 31)
    throw new CannotChange(`The name of a sheet takes at most 31 characters, not ${name.length}.`);
  if (FORBIDDEN.test(name)) throw new CannotChange(`The name of a sheet cannot hold any of [ ] : * ? / \\.`);
  if (name.startsWith("'") || name.endsWith("'"))
    throw new CannotChange('The name of a sheet cannot begin or end with an apostrophe.');
  if (sheets.some((one) => one.name !== own && one.name.toLowerCase() === name.toLowerCase()))
    throw new CannotChange(`There is a sheet "${name}" already.`);
}

export function renameSheet(parts: EditableParts, old: string, name: string): void {
  const sheets = sheetsOf(parts);
  indexOf(sheets, old);
  checkSheetName(sheets, name, old);
  const after = (sheet: string): string => (sheet.toLowerCase() === old.toLowerCase() ? name : sheet);
  const how = (sheet: string): Rewriting => ({
    from: sheet,
    to: after(sheet),
    area: (where, area) => ({ ...area, sheet: after(where) }),
    span: (first, last) => [after(first), after(last)],
  });
  rewriteAll(parts, how);
  rewritePivotSources(parts, workbookPart(parts), how(old));
  renameSheetParts(parts, new Map([[old, name]]));
}

export function deleteSheet(parts: EditableParts, name: string): void {
  const sheets = sheetsOf(parts);
  const at = indexOf(sheets, name);
  if (!sheets.some((one, i) => i !== at && one.state === 'visible' && one.part !== undefined))
    throw new CannotChange(`"${name}" is the last sheet that can be seen; a workbook keeps at least one.`);
  const isIt = (sheet: string): boolean => sheet.toLowerCase() === name.toLowerCase();
  const how = (sheet: string): Rewriting => ({
    from: sheet,
    to: sheet,
    area: (where, area) => (isIt(where) ? undefined : { ...area, sheet: where }),
    span: (first, last) => {
      const [a, b] = [first, last].map((one) =>
        sheets.findIndex((s) => s.name.toLowerCase() === one.toLowerCase()),
      );
      if (a === undefined || b === undefined || a < 0 || b < 0) return [first, last];
      const [from, to] = [Math.min(a, b), Math.max(a, b)];
      if (from === to) return isIt(first) ? undefined : [first, last];
      const start = from === at ? sheets[from + 1]?.name : sheets[from]?.name;
      const end = to === at ? sheets[to - 1]?.name : sheets[to]?.name;
      return start === undefined || end === undefined ? undefined : [start, end];
    },
  });
  const book = workbookPart(parts);
  const own = sheets.find((one) => one.name === name)?.part;
  const tables = own === undefined ? [] : tablesOf(parts, own);
  checkSlicers(
    parts,
    book,
    tables.map((table) => ({ table, area: undefined, lost: new Set(), headers: [] })),
  );
  rewritePivotSources(parts, book, how(name));
  const held = reachable(parts);
  const others = sheets.filter((one) => one.name !== name);
  for (const { name: other, part } of others)
    if (part !== undefined) rewriteFormulasIn(parts, part, how(other));
  rewriteNames(
    parts,
    book,
    sheets.map((one) => one.name),
    how,
  );
  removeSheetParts(parts, new Set([name]));
  // What hung on the sheet alone goes with it.
  const left = reachable(parts);
  for (const part of held) if (!left.has(part)) removePart(parts, book, part);
  for (const part of [...parts.keys()]) {
    const owner = /^(.*?)_rels\/([^/]+)\.rels$/.exec(part);
    if (
      owner &&
      held.has(`${owner[1] ?? ''}${owner[2] ?? ''}`) &&
      !left.has(`${owner[1] ?? ''}${owner[2] ?? ''}`)
    )
      parts.delete(part);
  }
}

function reachable(parts: EditableParts): Set<string> {
  const found = new Set<string>();
  const visit = (part: string): void => {
    for (const { target, external } of relationshipsOf(parts, part)) {
      if (external || found.has(target) || !parts.has(target)) continue;
      found.add(target);
      visit(target);
    }
  };
  visit('');
  return found;
}

export function moveSheet(parts: EditableParts, name: string, to: number): void {
  const book = workbookPart(parts);
  const sheets = sheetsOf(parts);
  const at = indexOf(sheets, name);
  if (!Number.isInteger(to) || to < 0 || to >= sheets.length)
    throw new CannotChange('There is no such place for the sheet.');
  const order = sheets.map((_, i) => i).filter((i) => i !== at);
  order.splice(to, 0, at);
  reorderSheets(parts, book, order);
}

/** `order` holds the present places in the order that they are to have. */
export function reorderSheets(parts: EditableParts, book: string, order: readonly number[]): void {
  const xml = readText(parts, book) ?? '';
  const root = parseXml(xml, book);
  const list = childrenOf(child(root, 'sheets'), 'sheet');
  const edits: Edit[] = list.map((sheet, i) => {
    const source = list[order[i] ?? i] ?? sheet;
    return { start: sheet.start, end: sheet.closeEnd, text: xml.slice(source.start, source.closeEnd) };
  });
  edits.push(...placeEdits(root, (old) => order.indexOf(old)));
  writeText(parts, book, applyEdits(xml, edits));
}

/** Local names and the sheet in front are told by the places of sheets. */
export function placeEdits(root: ReturnType<typeof parseXml>, after: (old: number) => number): Edit[] {
  const names = childrenOf(child(root, 'definedNames'), 'definedName').flatMap((name): Edit[] => {
    const local = name.attributes['localSheetId'];
    return local === undefined
      ? []
      : [
          {
            start: name.start,
            end: name.end,
            text: withAttributes(name, { localSheetId: String(after(Number(local))) }),
          },
        ];
  });
  const views = childrenOf(child(root, 'bookViews'), 'workbookView').map((view): Edit => {
    const changes = Object.fromEntries(
      ['activeTab', 'firstSheet']
        .filter((key) => view.attributes[key] !== undefined)
        .map((key) => [key, String(after(numeric(view.attributes[key], 0)))]),
    );
    return { start: view.start, end: view.end, text: withAttributes(view, changes) };
  });
  return [...names, ...views];
}

export function hideSheet(parts: EditableParts, name: string, hidden: boolean): void {
  const book = workbookPart(parts);
  const sheets = sheetsOf(parts);
  const at = indexOf(sheets, name);
  const visible = sheets.flatMap((one, i) => (one.state === 'visible' && i !== at ? [i] : []));
  if (hidden && visible.length === 0)
    throw new CannotChange(`"${name}" is the last sheet that can be seen; a workbook keeps at least one.`);
  const xml = readText(parts, book) ?? '';
  const root = parseXml(xml, book);
  const sheet = childrenOf(child(root, 'sheets'), 'sheet')[at];
  if (!sheet) return;
  const edits: Edit[] = [
    {
      start: sheet.start,
      end: sheet.end,
      text: withAttributes(sheet, { state: hidden ? 'hidden' : undefined }),
    },
  ];
  // A hidden sheet cannot be the one in front.
  const view = child(child(root, 'bookViews'), 'workbookView');
  if (hidden && view && numeric(view.attributes['activeTab'], 0) === at) {
    const front = visible.find((i) => i > at) ?? visible.at(-1) ?? 0;
    edits.push({
      start: view.start,
      end: view.end,
      text: withAttributes(view, { activeTab: String(front) }),
    });
  }
  writeText(parts, book, applyEdits(xml, edits));
}
