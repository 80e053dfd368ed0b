/** Adds to a sheet that is there: cells with their looks, rules of what may be typed, colors by formula, names. */
import type { Changes } from './changes';
import type { ConditionDescription, SheetDescription, ValidationDescription } from './description';
import { applyLayouts, type SheetLayout } from './layout';
import { growList, insertOrdered } from './metadata';
import type { Workbook } from './model';
import { addSheetParts } from './newSheets';
import { workbookPart } from './open';
import { listSheets, readParts } from './read';
import { readText, relatedPart, writeText, type EditableParts } from './relationships';
import { applyChanges } from './save';
import { behind } from './sheetOrder';
import type { KnownFunctions } from './spelling';
import { StyleEditor } from './styleEditor';
import { readSheetXml } from './structure/sheetCells';
import { conditional, validation } from './writeSheet';
import { applyEdits, child, childrenOf, descendants, numeric, parseXml, type Edit } from './xml';

export interface SheetAddition {
  readonly sheet: string;
  /** Cells of this sheet and of others. */
  readonly changes: Changes;
  readonly layout?: SheetLayout;
  readonly validations?: readonly ValidationDescription[];
  readonly conditions?: readonly ConditionDescription[];
  /** Workbook-wide names and their formulas without `=`. */
  readonly names?: Readonly<Record<string, string>>;
  /** Sheets that come with it, behind the others. */
  readonly newSheets?: readonly SheetDescription[];
}

/** The workbook with the addition in it; its formulas are not calculated yet. */
export function addToSheet(workbook: Workbook, addition: SheetAddition, known: KnownFunctions): Workbook {
  const parts: EditableParts = new Map(workbook.parts);
  applyChanges(workbook, addition.changes, parts);
  if (addition.layout) applyLayouts(parts, new Map([[addition.sheet, addition.layout]]));
  addRules(parts, addition);
  const { newSheets: sheets = [], names = {} } = addition;
  if (sheets.length + Object.keys(names).length > 0) addSheetParts(parts, { sheets, names });
  return readParts(parts, known);
}

function addRules(
  parts: EditableParts,
  { sheet: name, validations = [], conditions = [] }: SheetAddition,
): void {
  if (validations.length + conditions.length === 0) return;
  const book = workbookPart(parts);
  const sheets = listSheets(parts, book, parseXml(readText(parts, book) ?? '', book));
  const part = sheets.find((one) => one.name === name)?.part;
  if (part === undefined) throw new Error(`The workbook has no sheet "${name}" to add to.`);
  const xml = readText(parts, part) ?? '';
  const { root } = readSheetXml(xml, part);
  // What is written for sheets of our own has no prefixes.
  const own = (text: string): string => text.replace(/<(\/?)(?=[a-z])/gi, `<$1${root.prefix}`);
  const edits: Edit[] = [];
  if (conditions.length > 0) {
    const written = conditionsXml(parts, book, conditions, highestPriority(root));
    edits.push(insertOrdered(xml, root, behind('conditionalFormatting'), own(written)));
  }
  if (validations.length > 0) {
    const written = validations.map((one) => own(validation(one)));
    const list = child(root, 'dataValidations');
    const text = `<dataValidations count="${written.length}">`;
    edits.push(
      ...(list
        ? growList(xml, list, ...written)
        : [
            insertOrdered(
              xml,
              root,
              behind('dataValidations'),
              `${own(text)}${written.join('')}${own('</dataValidations>')}`,
            ),
          ]),
    );
  }
  if (edits.length > 0) writeText(parts, part, applyEdits(xml, edits));
}

function conditionsXml(
  parts: EditableParts,
  book: string,
  conditions: readonly ConditionDescription[],
  above: number,
): string {
  const stylesPart = relatedPart(parts, book, 'styles');
  if (stylesPart === undefined) return '';
  const styles = new StyleEditor(readText(parts, stylesPart) ?? '', stylesPart);
  const written = conditions.map((one, i) => conditional(one, styles.addOverlay(one.style), above + i + 1));
  if (styles.hasAdditions) writeText(parts, stylesPart, styles.xml());
  return written.join('');
}

/** Rules of the sheet that are there already are looked at first. */
const highestPriority = (root: ReturnType<typeof parseXml>): number =>
  childrenOf(root, 'conditionalFormatting')
    .flatMap((one) => descendants(one, 'cfRule'))
    .reduce((most, { attributes }) => Math.max(most, numeric(attributes['priority'], 0)), 0);
