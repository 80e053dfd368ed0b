/** Looks that follow the values: colors of verdicts and the like. */
import { addStylesPart } from '../emptyPackage';
import { insertOrdered } from '../metadata';
import type { ConditionalFormat } from '../model';
import { workbookPart } from '../open';
import { readText, relatedPart, writeText, type EditableParts } from '../relationships';
import { isComplete, toFileSpelling } from '../spelling';
import { CannotChange } from '../structure';
import { readAreas, writeAreas } from '../structure/rules';
import { readSheetXml } from '../structure/sheetCells';
import { StyleEditor } from '../styleEditor';
import { applyEdits, childrenOf, escapeXml, numeric, type XmlElement } from '../xml';
import type { ColorRule } from './acts';
import { behind } from '../sheetOrder';

export function addColorRule(parts: EditableParts, part: string, rule: ColorRule): void {
  if (rule.formulas.some((one) => one.trim() === '' || !isComplete(one)))
    throw new CannotChange('The rule is not whole yet: say when it holds.');
  const book = workbookPart(parts);
  const stylesPart = relatedPart(parts, book, 'styles') ?? addStylesPart(parts, book);
  const styles = new StyleEditor(readText(parts, stylesPart) ?? '', stylesPart);
  const overlay = styles.addOverlay(rule.style);
  writeText(parts, stylesPart, styles.xml());
  const xml = readText(parts, part) ?? '';
  const { root } = readSheetXml(xml, part);
  const p = root.prefix;
  const last = Math.max(0, ...rulesOf(root).map((one) => numeric(one.attributes['priority'], 0)));
  const operator = rule.operator === undefined ? '' : ` operator="${rule.operator}"`;
  const formulas = rule.formulas
    .map((one) => `<${p}formula>${escapeXml(toFileSpelling(one))}</${p}formula>`)
    .join('');
  const text = `<${p}cfRule type="${rule.kind}"${operator} dxfId="${overlay}" priority="${last + 1}">${formulas}</${p}cfRule>`;
  const cells = writeAreas(rule.areas);
  const element = `<${p}conditionalFormatting sqref="${cells}">${text}</${p}conditionalFormatting>`;
  writeText(
    parts,
    part,
    applyEdits(xml, [insertOrdered(xml, root, behind('conditionalFormatting'), element)]),
  );
}

export function deleteColorRule(parts: EditableParts, part: string, rule: ConditionalFormat): void {
  const xml = readText(parts, part) ?? '';
  const { root } = readSheetXml(xml, part);
  const found = childrenOf(root, 'conditionalFormatting').flatMap((list) =>
    writeAreasOf(list) === writeAreas(rule.areas)
      ? childrenOf(list, 'cfRule')
          .filter((one) => numeric(one.attributes['priority'], 1) === rule.priority)
          .map((one) => (list.children.length === 1 ? list : one))
      : [],
  );
  const [gone] = found;
  if (!gone) throw new CannotChange('The rule is not there any more.');
  writeText(parts, part, applyEdits(xml, [{ start: gone.start, end: gone.closeEnd, text: '' }]));
}

const rulesOf = (root: XmlElement) =>
  childrenOf(root, 'conditionalFormatting').flatMap((list) => childrenOf(list, 'cfRule'));

const writeAreasOf = ({ attributes }: XmlElement): string => writeAreas(readAreas(attributes['sqref'] ?? ''));
