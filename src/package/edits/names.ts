/** Defined names: added, changed under another name or not, taken away. */
import { parseCell } from '../../cells/address';
import { tokenize } from '../../cells/formulaTokens';
import { growList, insertOrdered } from '../metadata';
import type { Workbook } from '../model';
import { AFTER_NAMES } from '../newSheets';
import { workbookPart } from '../open';
import { readText, writeText, type EditableParts } from '../relationships';
import { isComplete, toFileSpelling } from '../spelling';
import { CannotChange } from '../structure';
import { indexOf, rewriteAll, sheetsOf } from '../structure/sheets';
import { applyEdits, child, childrenOf, escapeXml, parseXml, withAttributes, type XmlElement } from '../xml';
import type { WorkbookEdit } from './acts';

type SetName = Extract<WorkbookEdit, { readonly do: 'setName' }>;
type DeleteName = Extract<WorkbookEdit, { readonly do: 'deleteName' }>;

export function setName(parts: EditableParts, workbook: Workbook, act: SetName): void {
  const { formula, was, sheet } = act;
  const name = act.name.trim();
  checkName(name);
  if (formula.trim() === '' || !isComplete(formula))
    throw new CannotChange(`The name "${name}" needs cells, a value or a whole formula to stand for.`);
  const isTaken = workbook.names.some(
    (one) => same(one.name, name) && one.sheet === sheet && !(was !== undefined && same(one.name, was)),
  );
  if (isTaken) throw new CannotChange(`There is a name "${name}" already.`);
  if (was !== undefined && !same(was, name)) renameUses(parts, workbook, was, name);
  const local = sheet === undefined ? undefined : String(indexOf(sheetsOf(parts), sheet));
  const book = workbookPart(parts);
  const xml = readText(parts, book) ?? '';
  const root = parseXml(xml, book);
  const list = child(root, 'definedNames');
  const old = was === undefined ? undefined : find(list, was, local);
  const text = escapeXml(toFileSpelling(formula));
  const p = root.prefix;
  if (old) {
    const tag = withAttributes({ ...old, selfClosing: false }, { name });
    const edit = { start: old.start, end: old.closeEnd, text: `${tag}${text}</${p}definedName>` };
    writeText(parts, book, applyEdits(xml, [edit]));
    return;
  }
  const where = local === undefined ? '' : ` localSheetId="${local}"`;
  const element = `<${p}definedName name="${escapeXml(name)}"${where}>${text}</${p}definedName>`;
  const edits = list
    ? growList(xml, list, element).map((edit) => ({ ...edit, text: edit.text.replace(/ count="\d+"/, '') }))
    : [insertOrdered(xml, root, AFTER_NAMES, `<${p}definedNames>${element}</${p}definedNames>`)];
  writeText(parts, book, applyEdits(xml, edits));
}

export function deleteName(parts: EditableParts, workbook: Workbook, { name, sheet }: DeleteName): void {
  const uses = usesOf(workbook, name);
  if (uses.length > 0) {
    const others = uses.length > 1 ? ` and ${uses.length - 1} more` : '';
    throw new CannotChange(`"${name}" is used by ${uses[0] ?? ''}${others}: change what uses it first.`);
  }
  removeName(parts, name, sheet);
}

export function removeName(parts: EditableParts, name: string, sheet: string | undefined): void {
  const local = sheet === undefined ? undefined : String(indexOf(sheetsOf(parts), sheet));
  const book = workbookPart(parts);
  const xml = readText(parts, book) ?? '';
  const list = child(parseXml(xml, book), 'definedNames');
  const old = find(list, name, local);
  if (!list || !old) return;
  const gone = list.children.length === 1 ? list : old;
  writeText(parts, book, applyEdits(xml, [{ start: gone.start, end: gone.closeEnd, text: '' }]));
}

const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

const find = (list: XmlElement | undefined, name: string, local: string | undefined) =>
  childrenOf(list, 'definedName').find(
    ({ attributes }) => same(attributes['name'] ?? '', name) && attributes['localSheetId'] === local,
  );

/** What spreadsheet programs take for a name. */
function checkName(name: string): void {
  const looksLikeCell = parseCell(name) !== undefined || /^(?:r\d*c\d*|r|c|true|false)$/i.test(name);
  if (looksLikeCell) throw new CannotChange(`"${name}" reads as a cell or a value; choose another name.`);
  if (name.length > 255 || !/^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u.test(name))
    throw new CannotChange(
      `"${name}" cannot be a name: letters, digits, "_" and "." only, and a letter or "_" first.`,
    );
}

/** The cells and rules whose formulas say a name. */
function usesOf(workbook: Workbook, name: string): string[] {
  const says = (formula: string) =>
    tokenize(formula).some(({ kind, text }) => kind === 'name' && same(text, name));
  const any = (formulas: readonly string[]) => formulas.some(says);
  return [
    ...workbook.names.filter((one) => says(one.formula)).map((one) => `the name "${one.name}"`),
    ...workbook.sheets.flatMap((sheet) => [
      ...sheet.cells
        .filter(({ formula }) => formula !== undefined && says(formula))
        .map((cell) => {
          return `${sheet.name}, row ${cell.row + 1}`;
        }),
      ...(sheet.validations.some(({ formulas }) => any(formulas))
        ? [`a list or bound of ${sheet.name}`]
        : []),
      ...(sheet.conditionalFormats.some(({ formulas }) => any(formulas))
        ? [`a color rule of ${sheet.name}`]
        : []),
    ]),
  ];
}

function renameUses(parts: EditableParts, workbook: Workbook, was: string, name: string): void {
  if (workbook.names.filter((one) => same(one.name, was)).length > 1)
    throw new CannotChange(`Several sheets have a name "${was}"; give it another formula, not another name.`);
  rewriteAll(parts, (sheet) => ({
    from: sheet,
    to: sheet,
    area: (where, area) => ({ ...area, sheet: where }),
    word: (text) => (same(text, was) ? name : text),
  }));
}
