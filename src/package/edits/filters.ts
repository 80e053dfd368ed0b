/** The filter of a sheet: rows that do not show what is asked for are hidden. */
import { areaAddress, columnLetters, quotedSheet, type Area } from '../../cells/address';
import { growList, insertOrdered } from '../metadata';
import { AFTER_NAMES } from '../newSheets';
import { workbookPart } from '../open';
import { readText, writeText, type EditableParts } from '../relationships';
import { readSheetXml } from '../structure/sheetCells';
import { indexOf, sheetsOf } from '../structure/sheets';
import { applyEdits, child, encodeText, escapeXml, parseXml } from '../xml';
import type { WorkbookEdit } from './acts';
import { removeName } from './names';
import { behind } from '../sheetOrder';

type SetFilter = Extract<WorkbookEdit, { readonly do: 'setFilter' }>;

/** Spreadsheet programs keep the cells of a sheet's filter under this name as well. */
const NAME = '_xlnm._FilterDatabase';

export function setFilter(parts: EditableParts, part: string, act: SetFilter): void {
  const { sheet, area, column, shows } = act;
  clearFilter(parts, part, sheet);
  const xml = readText(parts, part) ?? '';
  const { root } = readSheetXml(xml, part);
  const p = root.prefix;
  const blank = shows.includes('') ? ' blank="1"' : '';
  const values = shows.filter((one) => one !== '').map((one) => `<${p}filter val="${encodeText(one)}"/>`);
  const filters = `<${p}filters${blank}>${values.join('')}</${p}filters>`;
  const text =
    `<${p}autoFilter ref="${areaAddress(area)}"><${p}filterColumn colId="${column}">` +
    `${filters}</${p}filterColumn></${p}autoFilter>`;
  writeText(parts, part, applyEdits(xml, [insertOrdered(xml, root, behind('autoFilter'), text)]));
  nameCells(parts, sheet, area);
}

export function clearFilter(parts: EditableParts, part: string, sheet: string): void {
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
