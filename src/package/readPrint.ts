import { parseArea, type Area } from '../cells/address';
import { workbookPart } from './open';
import { listSheets } from './read';
import { readText, type Parts } from './relationships';
import { child, childrenOf, flag, numeric, parseXml } from './xml';

/** How the file's author wants a sheet printed. */
export interface PrintSetup {
  readonly area?: Area;
  /** Rows repeated on every page. */
  readonly titleRows?: { readonly first: number; readonly last: number };
  readonly landscape?: boolean;
  readonly paper?: 'A4' | 'Letter';
  readonly gridlines: boolean;
}

/** Numbers of paper sizes, ECMA-376 part 1, 18.3.1.63. */
const PAPERS: Readonly<Record<number, PrintSetup['paper']>> = { 1: 'Letter', 9: 'A4' };

export function readPrintSetup(parts: Parts, sheet: string): PrintSetup {
  const book = workbookPart(parts);
  const root = parseXml(readText(parts, book) ?? '', book);
  const sheets = listSheets(parts, book, root);
  const at = sheets.findIndex(({ name }) => name === sheet);
  const part = sheets[at]?.part;
  const own = childrenOf(child(root, 'definedNames'), 'definedName').filter(
    ({ attributes }) => attributes['localSheetId'] === String(at),
  );
  const named = (name: string): string =>
    (own.find(({ attributes }) => attributes['name'] === name)?.text ?? '').replaceAll('$', '');
  const area = parseArea(named('_xlnm.Print_Area').split('!').at(-1) ?? '');
  const rows = /!(\d+):(\d+)/.exec(named('_xlnm.Print_Titles'));
  const xml = part === undefined ? undefined : readText(parts, part);
  const tree = part === undefined || xml === undefined ? undefined : parseXml(xml, part);
  const setup = child(tree, 'pageSetup')?.attributes ?? {};
  const paper = PAPERS[numeric(setup['paperSize'], 0)];
  const { orientation } = setup;
  return {
    ...(area && { area }),
    ...(rows && { titleRows: { first: Number(rows[1]) - 1, last: Number(rows[2]) - 1 } }),
    ...(orientation === 'landscape' || orientation === 'portrait'
      ? { landscape: orientation === 'landscape' }
      : {}),
    ...(paper && { paper }),
    gridlines: flag(child(tree, 'printOptions')?.attributes['gridLines']),
  };
}
