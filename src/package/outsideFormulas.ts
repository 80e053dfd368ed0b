/** The formulas that stand in no cell: of defined names, of rules for entries, of conditional formats. */
import type { Area } from '../cells/address';
import { workbookPart } from './open';
import type { Workbook } from './model';
import { listSheets, readParts } from './read';
import { readText, writeText, type EditableParts } from './relationships';
import { fromFileSpelling, toFileSpelling, type KnownFunctions } from './spelling';
import { readAreas } from './structure/rules';
import {
  applyEdits,
  child,
  childrenOf,
  descendants,
  escapeXml,
  parseXml,
  type Edit,
  type XmlElement,
} from './xml';

export interface OutsideFormula {
  readonly what: 'name' | 'list' | 'rule' | 'format';
  /** Of a name. */
  readonly name?: string;
  /** The sheet of a rule; of a name, the one that alone knows it. */
  readonly sheet?: string;
  /** The cells of a rule; its relative references count from the first of them. */
  readonly areas: readonly Area[];
  /** In our spelling. */
  readonly formula: string;
}

/** The workbook with each of these formulas as `change` gives it; those that it gives nothing for stay. */
export function withOutsideFormulas(
  workbook: Workbook,
  known: KnownFunctions,
  change: (one: OutsideFormula) => string | undefined,
): Workbook {
  const parts: EditableParts = new Map(workbook.parts);
  const book = workbookPart(parts);
  const xml = readText(parts, book) ?? '';
  const root = parseXml(xml, book);
  const sheets = listSheets(parts, book, root);
  const edit = (element: XmlElement, one: Omit<OutsideFormula, 'formula'>): Edit[] => {
    const formula = fromFileSpelling(element.text, known);
    const text = element.selfClosing ? undefined : change({ ...one, formula });
    if (text === undefined || text === formula) return [];
    return [{ start: element.end, end: element.closeStart, text: escapeXml(toFileSpelling(text)) }];
  };
  let changed = false;
  const names = childrenOf(child(root, 'definedNames'), 'definedName').flatMap((element) => {
    const { name = '', localSheetId } = element.attributes;
    const sheet = localSheetId === undefined ? undefined : sheets[Number(localSheetId)]?.name;
    return edit(element, { what: 'name', name, ...(sheet !== undefined && { sheet }), areas: [] });
  });
  if (names.length > 0) {
    changed = true;
    writeText(parts, book, applyEdits(xml, names));
  }
  for (const { name: sheet, part } of sheets) {
    const text = part === undefined ? undefined : readText(parts, part);
    if (part === undefined || text === undefined || !/<(?:\w+:)?(?:dataValidation|cfRule)\b/.test(text))
      continue;
    const tree = parseXml(text, part);
    const rules = descendants(tree, 'dataValidation').flatMap((rule) => {
      const what = rule.attributes['type'] === 'list' ? 'list' : 'rule';
      return formulasOf(rule).flatMap((one) => edit(one, { what, sheet, areas: areasOf(rule) }));
    });
    const formats = descendants(tree, 'conditionalFormatting').flatMap((format) =>
      childrenOf(format, 'cfRule').flatMap((rule) =>
        formulasOf(rule).flatMap((one) => edit(one, { what: 'format', sheet, areas: areasOf(format) })),
      ),
    );
    const edits = [...rules, ...formats];
    if (edits.length === 0) continue;
    changed = true;
    writeText(parts, part, applyEdits(text, edits));
  }
  return changed ? readParts(parts, known) : workbook;
}

/** In an extension of the format each stands in an element of its own once more. */
const formulasOf = (rule: XmlElement): XmlElement[] =>
  rule.children.flatMap((one) => {
    if (/^formula[12]?$/.test(one.name)) return [child(one, 'f') ?? one];
    return one.name === 'f' ? [one] : [];
  });

const areasOf = (element: XmlElement): Area[] =>
  readAreas(element.attributes['sqref'] ?? child(element, 'sqref')?.text ?? '');
