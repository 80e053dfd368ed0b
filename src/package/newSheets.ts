import type { SheetDescription, SheetsDescription } from './description';
import { addStylesPart } from './emptyPackage';
import { ensureDynamicMark } from './metadata';
import { insertOrdered } from './metadata';
import { changeNotes } from './notes';
import type { Sheet } from './model';
import { workbookPart } from './open';
import type { EditableParts } from './relationships';
import { declareType, freePart, readText, relate, relatedPart, writeText } from './relationships';
import { toFileSpelling } from './spelling';
import { StyleEditor } from './styleEditor';
import { placedCells, printNames, sheetXml } from './writeSheet';
import type { Edit } from './xml';
import { appendChild, applyEdits, child, childrenOf, escapeXml, numeric, parseXml } from './xml';

const SHEET_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';
const DOCUMENT = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** What must stand behind the list of names in the workbook part. */
export const AFTER_NAMES = [
  'calcPr',
  'oleSize',
  'customWorkbookViews',
  'pivotCaches',
  'smartTagPr',
  'smartTagTypes',
  'webPublishing',
  'fileRecoveryPr',
  'webPublishObjects',
  'extLst',
];

export function addSheetParts(parts: EditableParts, description: SheetsDescription): void {
  const book = workbookPart(parts);
  const stylesPart = relatedPart(parts, book, 'styles') ?? addStylesPart(parts, book);
  const styles = new StyleEditor(readText(parts, stylesPart) ?? '', stylesPart);
  const style = styleFinder(styles, description);
  const present = childrenOf(child(parseXml(readText(parts, book) ?? '', book), 'sheets'), 'sheet');
  checkNames(
    present.map((one) => one.attributes['name'] ?? ''),
    description.sheets,
  );
  let mark: number | undefined;
  const added = description.sheets.map((sheet, at) => {
    const part = freePart(parts, 'xl/worksheets/sheet', '.xml');
    writeText(parts, part, '<worksheet/>');
    const cells = placedCells(sheet);
    const xml = sheetXml(sheet, cells, {
      style,
      overlay: (condition) => styles.addOverlay(condition.style),
      mark: () => (mark ??= ensureDynamicMark(parts, book)),
      relate: (address) => relate(parts, part, 'hyperlink', address, true),
      isSelected: present.length + at === 0,
    });
    writeText(parts, part, xml);
    declareType(parts, part, SHEET_TYPE);
    const notes = cells.flatMap(({ row, column, note }) =>
      note === undefined ? [] : [{ row, column, text: note }],
    );
    if (notes.length > 0) changeNotes(parts, part, notes);
    return { sheet, id: relate(parts, book, 'worksheet', part) };
  });
  if (styles.hasAdditions) writeText(parts, stylesPart, styles.xml());
  listInWorkbook(parts, book, added, description);
}

/** A sheet without formulas and looks, as a calculation reads it. */
export const sheetOfValues = (sheet: SheetDescription): Sheet => ({
  name: sheet.name,
  state: sheet.state ?? 'visible',
  cells: placedCells(sheet).map(({ row, column, value = null }) => ({ row, column, value, style: 0 })),
  columns: [],
  rows: [],
  defaultColumnWidth: 8,
  defaultRowHeight: 15,
  merges: [],
  frozen: { rows: 0, columns: 0 },
  showsGridlines: true,
  isProtected: false,
  zoom: 100,
  validations: [],
  conditionalFormats: [],
  hyperlinks: [],
  notes: [],
  tables: [],
});

/** Styles that no cell asks for are not written. */
function styleFinder(
  styles: StyleEditor,
  { styles: described = {} }: SheetsDescription,
): (name: string) => number {
  const known = new Map<string, number>();
  return (name) => {
    const style = described[name];
    if (style === undefined) throw new Error(`A cell asks for the style "${name}", which is not described.`);
    const index = known.get(name) ?? styles.addStyle(style);
    known.set(name, index);
    return index;
  };
}

/** The rules that spreadsheet programs hold names of sheets to. */
function checkNames(taken: readonly string[], sheets: readonly SheetDescription[]): void {
  const seen = new Set(taken.map((name) => name.toLowerCase()));
  for (const { name } of sheets) {
    const isBad =
      name === '' ||
      name.length > 31 ||
      /[\\/?*[\]:]/.test(name) ||
      name.startsWith("'") ||
      name.endsWith("'");
    if (isBad)
      throw new Error(`"${name}" cannot be the name of a sheet: 1 to 31 characters, none of \\ / ? * [ ] :`);
    if (seen.has(name.toLowerCase())) throw new Error(`The workbook already has a sheet "${name}".`);
    seen.add(name.toLowerCase());
  }
}

interface AddedSheet {
  readonly sheet: SheetDescription;
  readonly id: string;
}

function listInWorkbook(
  parts: EditableParts,
  book: string,
  added: readonly AddedSheet[],
  description: SheetsDescription,
): void {
  const xml = readText(parts, book) ?? '';
  const root = parseXml(xml, book);
  const p = root.prefix;
  const list = child(root, 'sheets');
  if (list === undefined) throw new Error('The workbook has no list of sheets.');
  let number = list.children.reduce(
    (highest, one) => Math.max(highest, numeric(one.attributes['sheetId'], 0)),
    0,
  );
  const entries = added.map(({ sheet, id }) => {
    const state = sheet.state === undefined || sheet.state === 'visible' ? '' : ` state="${sheet.state}"`;
    return `<${p}sheet xmlns:r="${DOCUMENT}" name="${escapeXml(sheet.name)}" sheetId="${++number}"${state} r:id="${id}"/>`;
  });
  const name = (called: string, formula: string, local: string) =>
    `<${p}definedName name="${escapeXml(called)}"${local}>${escapeXml(formula)}</${p}definedName>`;
  const names = [
    ...added.flatMap(({ sheet }, at) =>
      printNames(sheet).map(([called, formula]) =>
        name(called, formula, ` localSheetId="${list.children.length + at}"`),
      ),
    ),
    ...Object.entries(description.names ?? {}).map(([called, formula]) =>
      name(called, toFileSpelling(formula), ''),
    ),
    ...Object.entries(description.hiddenNames ?? {}).map(([called, formula]) =>
      name(called, toFileSpelling(formula), ' hidden="1"'),
    ),
  ].join('');
  const edits: Edit[] = [appendChild(xml, list, entries.join(''))];
  const present = child(root, 'definedNames');
  if (names !== '' && present !== undefined) edits.push(appendChild(xml, present, names));
  else if (names !== '')
    edits.push(insertOrdered(xml, root, AFTER_NAMES, `<${p}definedNames>${names}</${p}definedNames>`));
  writeText(parts, book, applyEdits(xml, edits));
}
