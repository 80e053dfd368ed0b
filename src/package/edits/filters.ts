/** The filter of a sheet: rows that do not show what is asked for are hidden. */
import { areaAddress, columnLetters, quotedSheet, type Area } from '../../cells/address';
import { growList, insertOrdered } from '../metadata';
import { AFTER_NAMES } from '../newSheets';
import { workbookPart } from '../open';
import { readText, writeText, type EditableParts } from '../relationships';
import { readSheetXml } from '../structure/sheetCells';
import { CannotChange } from '../structure';
import { indexOf, sheetsOf } from '../structure/sheets';
import { tablesOf } from '../structure/tableParts';
import {
  applyEdits,
  child,
  childrenOf,
  encodeText,
  escapeXml,
  numeric,
  parseXml,
  type XmlElement,
} from '../xml';
import type { WorkbookEdit } from './acts';
import { removeName } from './names';
import { behind } from '../sheetOrder';

type SetFilter = Extract<WorkbookEdit, { readonly do: 'setFilter' }>;

/** Spreadsheet programs keep the cells of a sheet's filter under this name as well. */
const NAME = '_xlnm._FilterDatabase';

export function setFilter(parts: EditableParts, part: string, act: SetFilter): void {
  const { sheet, area } = act;
  if (act.table !== undefined) {
    setTableFilter(parts, tablePart(parts, part, act.table), act);
    return;
  }
  const before = readText(parts, part) ?? '';
  const old = child(readSheetXml(before, part).root, 'autoFilter');
  removeFilter(parts, part, sheet);
  const xml = readText(parts, part) ?? '';
  const { root } = readSheetXml(xml, part);
  const text = filterText(root.prefix, before, old, act);
  writeText(parts, part, applyEdits(xml, [insertOrdered(xml, root, behind('autoFilter'), text)]));
  nameCells(parts, sheet, area);
}

/** The filter with what the other columns asked for before. */
function filterText(p: string, xml: string, old: XmlElement | undefined, act: SetFilter): string {
  const others =
    old?.attributes['ref'] === areaAddress(act.area)
      ? childrenOf(old, 'filterColumn').filter((one) => columnOf(one) !== act.column)
      : [];
  const columns = [
    ...others.map((one) => ({ column: columnOf(one), text: xml.slice(one.start, one.closeEnd) })),
    ...(act.shows ? [{ column: act.column, text: criterion(p, act.column, act.shows) }] : []),
  ].sort((a, b) => a.column - b.column);
  return `<${p}autoFilter ref="${areaAddress(act.area)}">${columns.map((one) => one.text).join('')}</${p}autoFilter>`;
}

function tablePart(parts: EditableParts, part: string, name: string): string {
  const table = tablesOf(parts, part).find((one) => one.name === name);
  if (!table) throw new CannotChange(`The sheet has no table "${name}" any more.`);
  return table.part;
}

/** The filter comes before all else in a table. */
function setTableFilter(parts: EditableParts, table: string, act: SetFilter): void {
  const xml = readText(parts, table) ?? '';
  const root = parseXml(xml, table);
  const old = child(root, 'autoFilter');
  const text = filterText(root.prefix, xml, old, act);
  const edit = old ? { start: old.start, end: old.closeEnd, text } : { start: root.end, end: root.end, text };
  writeText(parts, table, applyEdits(xml, [edit]));
}

const columnOf = ({ attributes }: XmlElement): number => numeric(attributes['colId'], 0);

function criterion(p: string, column: number, shows: readonly string[]): string {
  const blank = shows.includes('') ? ' blank="1"' : '';
  const values = shows.filter((one) => one !== '').map((one) => `<${p}filter val="${encodeText(one)}"/>`);
  return `<${p}filterColumn colId="${column}"><${p}filters${blank}>${values.join('')}</${p}filters></${p}filterColumn>`;
}

/** A table keeps its arrows, a sheet loses them. */
export function clearFilter(
  parts: EditableParts,
  part: string,
  { sheet, table }: Extract<WorkbookEdit, { readonly do: 'clearFilter' }>,
): void {
  if (table === undefined) {
    removeFilter(parts, part, sheet);
    return;
  }
  const name = tablePart(parts, part, table);
  const xml = readText(parts, name) ?? '';
  const edits = childrenOf(child(parseXml(xml, name), 'autoFilter'), 'filterColumn').map((one) => ({
    start: one.start,
    end: one.closeEnd,
    text: '',
  }));
  writeText(parts, name, applyEdits(xml, edits));
}

function removeFilter(parts: EditableParts, part: string, sheet: string): void {
  const xml = readText(parts, part) ?? '';
  const old = child(readSheetXml(xml, part).root, 'autoFilter');
  if (old) writeText(parts, part, applyEdits(xml, [{ start: old.start, end: old.closeEnd, text: '' }]));
  removeName(parts, NAME, sheet);
}

function nameCells(parts: EditableParts, sheet: string, { top, left, bottom, right }: Area): void {
  const book = workbookPart(parts);
  const xml = readText(parts, book) ?? '';
  const root = parseXml(xml, book);
  const list = child(root, 'definedNames');
  const p = root.prefix;
  const corner = (row: number, column: number) => `$${columnLetters(column)}$${row + 1}`;
  const cells = `${quotedSheet(sheet)}!${corner(top, left)}:${corner(bottom, right)}`;
  const local = indexOf(sheetsOf(parts), sheet);
  const element = `<${p}definedName name="${NAME}" localSheetId="${local}" hidden="1">${escapeXml(cells)}</${p}definedName>`;
  const edits = list
    ? growList(xml, list, element).slice(-1)
    : [insertOrdered(xml, root, AFTER_NAMES, `<${p}definedNames>${element}</${p}definedNames>`)];
  writeText(parts, book, applyEdits(xml, edits));
}
