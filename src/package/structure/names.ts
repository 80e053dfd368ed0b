/** Defined names of the workbook part: areas, filters, print set-up, formulas. */
import { tokenize } from '../../cells/formulaTokens';
import { readText, writeText, type EditableParts } from '../relationships';
import { applyEdits, child, childrenOf, escapeXml, parseXml, type Edit } from '../xml';
import { rewriteFormula, type Rewriting } from './formula';

/** Names are written with their sheets; what is written without one counts from the sheet that the name belongs to. */
export function rewriteNames(
  parts: EditableParts,
  book: string,
  sheets: readonly string[],
  how: (own: string) => Rewriting,
): void {
  const xml = readText(parts, book) ?? '';
  const root = parseXml(xml, book);
  const list = child(root, 'definedNames');
  const edits = childrenOf(list, 'definedName').flatMap((name): Edit[] => {
    const own = sheets[Number(name.attributes['localSheetId'] ?? 0)] ?? '';
    const text = rewriteFormula(name.text, how(own));
    if (text === name.text) return [];
    // A print area or a filter without cells is no good; the name goes with them.
    if (text.includes('#REF!') && name.attributes['name']?.startsWith('_xlnm.'))
      return withoutGone(name, text);
    return [{ start: name.end, end: name.closeStart, text: escapeXml(text) }];
  });
  if (edits.length === 0) return;
  const none = list && edits.filter(({ text }) => text === '').length === list.children.length;
  const all = none ? [{ start: list.start, end: list.closeEnd, text: '' }] : edits;
  writeText(parts, book, applyEdits(xml, all));
}

/** The areas of a list that are left. */
function withoutGone(name: ReturnType<typeof parseXml>, text: string): Edit[] {
  const areas: string[][] = [[]];
  for (const token of tokenize(text)) {
    if (token.kind === 'comma') areas.push([]);
    else areas.at(-1)?.push(token.text);
  }
  const left = areas.map((area) => area.join('')).filter((area) => !area.includes('#REF!'));
  return left.length === 0
    ? [{ start: name.start, end: name.closeEnd, text: '' }]
    : [{ start: name.end, end: name.closeStart, text: escapeXml(left.join(',')) }];
}
