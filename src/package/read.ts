import type { DefinedName, Sheet, Workbook } from './model';
import { readTheme } from './colors';
import { openPackage, workbookPart } from './open';
import { dynamicArrayMarks } from './readMetadata';
import { readSheet } from './readSheet';
import { readStyles } from './readStyles';
import type { Parts } from './relationships';
import { readText, relatedPart, relationshipsOf } from './relationships';
import type { KnownFunctions } from './spelling';
import { fromFileSpelling, knownFunctions } from './spelling';
import { UnreadableWorkbook } from './unreadable';
import type { XmlElement } from './xml';
import { child, childrenOf, decodeText, flag, numeric, parseXml, prefixed, scanXml } from './xml';
import type { ZipLimits } from './zip';

/**
 * Reads an .xlsx file.
 * @param functionIds ids of the functions that exist, without the namespace (`SEAT.FORCE`): files do not tell the
 * dots of a name from underscores, the list does.
 * @throws UnreadableWorkbook with one sentence for a person, for every file that cannot be opened safely.
 */
export function readWorkbook(bytes: Uint8Array, functionIds: Iterable<string>, limits?: ZipLimits): Workbook {
  return readParts(openPackage(bytes, limits), knownFunctions(functionIds));
}

export interface SheetPart {
  readonly name: string;
  readonly state: Sheet['state'];
  /** Missing for a sheet that holds no cells, such as one chart. */
  readonly part: string | undefined;
}

export function readParts(parts: Parts, known: KnownFunctions): Workbook {
  const part = workbookPart(parts);
  const root = parseXml(readText(parts, part) ?? '', part);
  const related = relationshipsOf(parts, part);
  const neighbour = (kind: string) => related.find((one) => one.kind === kind)?.target;
  const tree = (kind: string) => {
    const name = neighbour(kind);
    const xml = name === undefined ? undefined : readText(parts, name);
    return name === undefined || xml === undefined ? undefined : parseXml(xml, name);
  };
  const theme = readTheme(parts, neighbour('theme'));
  const styles = readStyles(tree('styles'), theme);
  const date1904 = flag(child(root, 'workbookPr')?.attributes['date1904']);
  const context = {
    sharedStrings: readSharedStrings(parts, neighbour('sharedStrings')),
    known,
    dynamicMarks: dynamicArrayMarks(tree('sheetMetadata')),
    date1904,
    styles,
    theme,
  };
  const listed = listSheets(parts, part, root);
  const front = listed[numeric(child(child(root, 'bookViews'), 'workbookView')?.attributes['activeTab'], 0)];
  const sheets = listed.flatMap((one) =>
    one.part === undefined ? [] : [readSheet(parts, one.part, one.name, one.state, context)],
  );
  if (sheets.length === 0) throw new UnreadableWorkbook('The workbook has no sheet with cells.');
  const settings = child(root, 'calcPr')?.attributes;
  const precision = settings?.['fullPrecision'];
  return {
    sheets,
    activeSheet: Math.max(
      0,
      sheets.findIndex((sheet) => sheet.name === front?.name),
    ),
    names: readNames(root, listed, known),
    styles: styles.cells,
    date1904,
    ...(flag(settings?.['iterate']) && { iterates: true as const }),
    ...(precision !== undefined && !flag(precision) && { countsAsShown: true as const }),
    ...(isFromMacintosh(parts) && { isFromMacintosh: true as const }),
    parts,
  };
}

/** The program that saved a file names itself among its extended properties (ECMA-376 part 1, 22.2.2.1). */
function isFromMacintosh(parts: Parts): boolean {
  const part = relatedPart(parts, '', 'extended-properties');
  const xml = part === undefined ? undefined : readText(parts, part);
  if (part === undefined || xml === undefined) return false;
  return /\bMacintosh\b/.test(child(parseXml(xml, part), 'Application')?.text ?? '');
}

/** All sheets in the order of their tabs, those that hold a chart only among them: local names count them too. */
export function listSheets(parts: Parts, part: string, root: XmlElement): SheetPart[] {
  const related = relationshipsOf(parts, part);
  return childrenOf(child(root, 'sheets'), 'sheet').map(({ attributes }) => {
    const name = attributes['name'] ?? '';
    const target = related.find((one) => one.id === prefixed(attributes, 'id'));
    if (target === undefined || !parts.has(target.target))
      throw new UnreadableWorkbook(`The sheet "${name}" is missing from the file.`);
    const state = attributes['state'];
    return {
      name,
      state: state === 'hidden' || state === 'veryHidden' ? state : 'visible',
      part: target.kind === 'worksheet' ? target.target : undefined,
    };
  });
}

function readNames(root: XmlElement, sheets: readonly SheetPart[], known: KnownFunctions): DefinedName[] {
  return childrenOf(child(root, 'definedNames'), 'definedName').flatMap(
    ({ attributes, text }): DefinedName[] => {
      const name = attributes['name'] ?? '';
      // Print areas, filters and the like are the spreadsheet program's own and stay in the file.
      if (name === '' || name.startsWith('_xl')) return [];
      const local = attributes['localSheetId'];
      const sheet = local === undefined ? undefined : sheets[numeric(local, -1)]?.name;
      return [
        {
          name,
          formula: fromFileSpelling(text, known),
          hidden: flag(attributes['hidden']),
          ...(sheet === undefined ? {} : { sheet }),
        },
      ];
    },
  );
}

/** Plain text of every string; runs of different looks are joined, reading aids left out. */
function readSharedStrings(parts: Parts, part: string | undefined): string[] {
  const xml = part === undefined ? undefined : readText(parts, part);
  if (part === undefined || xml === undefined) return [];
  const strings: string[] = [];
  let current = '';
  let inText = false;
  let phonetic = 0;
  scanXml(xml, part, {
    open({ name }) {
      if (name === 'si') current = '';
      else if (name === 'rPh') phonetic++;
      else if (name === 't') inText = phonetic === 0;
    },
    text(text) {
      if (inText) current += text;
    },
    close(name) {
      if (name === 'si') strings.push(decodeText(current));
      else if (name === 'rPh') phonetic--;
      else if (name === 't') inText = false;
    },
  });
  return strings;
}
