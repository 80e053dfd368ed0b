/** Tables: their area, their columns and the formulas of their columns. */
import { areaAddress, parseArea, type Area } from '../../cells/address';
import { readText, relationshipsOf, writeText, type EditableParts } from '../relationships';
import {
  applyEdits,
  child,
  childrenOf,
  decodeText,
  descendants,
  encodeText,
  escapeXml,
  flag,
  numeric,
  parseXml,
  withAttributes,
  type Edit,
  type XmlElement,
} from '../xml';
import { CannotChange } from './acts';
import { rewriteFormula, type Rewriting } from './formula';
import type { Plan } from './plan';
import { filterEdits, wholeAfter } from './sheetPart';

export interface TablePart {
  readonly id: string;
  readonly part: string;
  readonly name: string;
  readonly area: Area;
  readonly hasHeader: boolean;
  readonly hasTotals: boolean;
  readonly columns: readonly string[];
}

export function tablesOf(parts: EditableParts, sheetPart: string): TablePart[] {
  return relationshipsOf(parts, sheetPart)
    .filter(({ kind, external }) => kind === 'table' && !external)
    .flatMap(({ id, target }) => {
      const root = rootOf(parts, target);
      const area = parseArea(root?.attributes['ref'] ?? '');
      if (!root || !area) return [];
      return [
        {
          id,
          part: target,
          name: root.attributes['displayName'] ?? root.attributes['name'] ?? '',
          area,
          hasHeader: flag(root.attributes['headerRowCount'], true),
          hasTotals: numeric(root.attributes['totalsRowCount'], 0) > 0,
          columns: columnsOf(root).map((column) => decodeText(column.attributes['name'] ?? '')),
        },
      ];
    });
}

function rootOf(parts: EditableParts, part: string): XmlElement | undefined {
  const xml = readText(parts, part);
  return xml === undefined ? undefined : parseXml(xml, part);
}

const columnsOf = (root: XmlElement): XmlElement[] => childrenOf(child(root, 'tableColumns'), 'tableColumn');

/** What an act does to a table. */
export interface TableAfter {
  readonly table: TablePart;
  /** Undefined: the table is gone whole. */
  readonly area: Area | undefined;
  /** Names in lower case of columns that are gone. */
  readonly lost: ReadonlySet<string>;
  /** Header cells that new columns need. */
  readonly headers: readonly { readonly row: number; readonly column: number; readonly text: string }[];
}

export function planTable(plan: Plan, how: Rewriting, table: TablePart): TableAfter {
  const { area, name } = table;
  const placed = wholeAfter(plan, how, area, `The table "${name}"`);
  if (!placed) return { table, area: undefined, lost: new Set(), headers: [] };
  const at = (row: number, column: number) =>
    plan.area(how.from, { top: row, bottom: row, left: column, right: column });
  const keepsRow = (row: number): boolean =>
    at(row, area.left) !== undefined || at(row, area.right) !== undefined;
  if (table.hasHeader && !keepsRow(area.top))
    throw new CannotChange(
      `The table "${name}" would lose its row of headings; delete the table whole, or rows below it.`,
    );
  if (table.hasTotals && !keepsRow(area.bottom))
    throw new CannotChange(`The table "${name}" would lose its row of totals; switch the totals off first.`);
  const body = placed.bottom - placed.top + 1 - Number(table.hasHeader) - Number(table.hasTotals);
  if (body < 1) throw new CannotChange(`The table "${name}" would lose its last row; clear the row instead.`);
  const columns = table.columns.map((column, i) => ({
    column,
    to: at(area.bottom, area.left + i)?.left ?? at(area.top, area.left + i)?.left,
  }));
  const lost = new Set(columns.flatMap(({ column, to }) => (to === undefined ? [column.toLowerCase()] : [])));
  const taken = new Set(columns.map(({ to }) => to));
  const names = new Set(table.columns.map((one) => one.toLowerCase()));
  const headers: { row: number; column: number; text: string }[] = [];
  for (let column = placed.left; column <= placed.right; column++) {
    if (taken.has(column)) continue;
    let number = 1;
    while (names.has(`column${number}`)) number++;
    names.add(`column${number}`);
    headers.push({ row: placed.top, column, text: `Column${number}` });
  }
  return { table, area: placed, lost, headers };
}

export function writeTable(parts: EditableParts, after: TableAfter, plan: Plan, how: Rewriting): void {
  const { table, area } = after;
  const xml = readText(parts, table.part);
  if (xml === undefined || !area) return;
  const root = parseXml(xml, table.part);
  const edits: Edit[] = [
    { start: root.start, end: root.end, text: withAttributes(root, { ref: areaAddress(area) }) },
    ...childrenOf(root, 'autoFilter').flatMap((filter) => filterEdits(filter, plan, how)),
    ...columnEdits(xml, root, after, plan, how),
  ];
  writeText(parts, table.part, applyEdits(xml, edits));
}

function columnEdits(xml: string, root: XmlElement, after: TableAfter, plan: Plan, how: Rewriting): Edit[] {
  const list = child(root, 'tableColumns');
  const { area, table, headers } = after;
  if (!list || !area) return [];
  const placed = new Map<number, string>();
  let id = 0;
  columnsOf(root).forEach((column, i) => {
    id = Math.max(id, numeric(column.attributes['id'], 0));
    const { top, bottom } = table.area;
    const left = table.area.left + i;
    const to =
      plan.area(how.from, { top: bottom, bottom, left, right: left }) ??
      plan.area(how.from, { top, bottom: top, left, right: left });
    if (to)
      placed.set(to.left, applyEdits(xml.slice(column.start, column.closeEnd), formulaEdits(column, how)));
  });
  for (const { column, text } of headers)
    placed.set(column, `<${list.prefix}tableColumn id="${++id}" name="${encodeText(text)}"/>`);
  const columns = [...placed].sort(([a], [b]) => a - b).map(([, text]) => text);
  const open = withAttributes({ ...list, selfClosing: false }, { count: String(columns.length) });
  return [
    {
      start: list.start,
      end: list.closeEnd,
      text: `${open}${columns.join('')}</${list.prefix}tableColumns>`,
    },
  ];
}

const COLUMN_FORMULAS = ['calculatedColumnFormula', 'totalsRowFormula'];

function formulaEdits(column: XmlElement, how: Rewriting): Edit[] {
  return COLUMN_FORMULAS.flatMap((name) => descendants(column, name)).flatMap((formula) => {
    const text = rewriteFormula(formula.text, how);
    return text === formula.text
      ? []
      : [
          {
            start: formula.end - column.start,
            end: formula.closeStart - column.start,
            text: escapeXml(text),
          },
        ];
  });
}

/** Formulas of the columns of a table on another sheet. */
export function rewriteTableFormulas(parts: EditableParts, part: string, how: Rewriting): void {
  const xml = readText(parts, part);
  if (xml === undefined) return;
  const root = parseXml(xml, part);
  const edits = columnsOf(root).flatMap((column) =>
    formulaEdits(column, how).map((edit) => ({
      ...edit,
      start: edit.start + column.start,
      end: edit.end + column.start,
    })),
  );
  if (edits.length > 0) writeText(parts, part, applyEdits(xml, edits));
}

const COLUMN = String.raw`\[((?:'.|[^\][])*)\]`;
const SPAN = new RegExp(`${COLUMN}:${COLUMN}`, 'g');
const SINGLE = new RegExp(COLUMN, 'g');

const unmarked = (name: string): string => name.trim().replace(/^@/, '').replace(/'(.)/g, '$1').toLowerCase();
const marked = (name: string): string => name.replace(/[[\]#']/g, "'$&");

/** What the bracket of a table reference says after an act; a span shrinks to the columns that are left of it. */
export function bracketAfter({ table, area, lost }: TableAfter, bracket: string): string | undefined {
  if (!area) return undefined;
  if (lost.size === 0) return bracket;
  const inner = bracket.slice(1, -1);
  if (!inner.includes('[')) return lost.has(unmarked(inner)) ? undefined : bracket;
  const at = (name: string): number =>
    table.columns.findIndex((column) => column.toLowerCase() === unmarked(name));
  let isGone = false;
  const shrunk = inner.replace(SPAN, (span, first: string, last: string) => {
    const ends = [at(first), at(last)];
    const left = table.columns
      .slice(Math.min(...ends), Math.max(...ends) + 1)
      .filter((column) => !lost.has(column.toLowerCase()));
    const [from, to = from] = [left[0], left.at(-1)];
    if (ends.includes(-1)) return span;
    if (from === undefined || to === undefined) {
      isGone = true;
      return span;
    }
    return `[${marked(from)}]:[${marked(to)}]`;
  });
  for (const [, name = ''] of shrunk.matchAll(SINGLE)) isGone ||= lost.has(unmarked(name));
  return isGone ? undefined : `[${shrunk}]`;
}

/** The bracket of a table reference with columns called otherwise; old names in lower case. */
export function renamedBracket(bracket: string, names: ReadonlyMap<string, string>): string {
  const inner = bracket.slice(1, -1);
  if (inner.includes('['))
    return bracket.replace(SINGLE, (whole, name: string) => {
      const now = names.get(unmarked(name));
      return now === undefined ? whole : `[${marked(now)}]`;
    });
  const now = names.get(unmarked(inner));
  if (now === undefined) return bracket;
  const isPlain = /^[\p{L}\p{N}_. ]+$/u.test(now) && !inner.startsWith('@');
  return isPlain ? `[${now}]` : `[${inner.startsWith('@') ? '@' : ''}[${marked(now)}]]`;
}
