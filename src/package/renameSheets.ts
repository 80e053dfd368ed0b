import { workbookPart } from './open';
import type { EditableParts } from './relationships';
import { readText, writeText } from './relationships';
import { applyEdits, child, childrenOf, parseXml, withAttributes } from './xml';

/** Old name → new name. Formulas that name the sheets are the caller's to change. */
export function renameSheetParts(parts: EditableParts, names: ReadonlyMap<string, string>): void {
  const book = workbookPart(parts);
  const xml = readText(parts, book) ?? '';
  const edits = childrenOf(child(parseXml(xml, book), 'sheets'), 'sheet').flatMap((sheet) => {
    const name = names.get(sheet.attributes['name'] ?? '');
    return name === undefined
      ? []
      : [{ start: sheet.start, end: sheet.end, text: withAttributes(sheet, { name }) }];
  });
  writeText(parts, book, applyEdits(xml, edits));
}
