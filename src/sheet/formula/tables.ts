/** Parts of tables: `Tbl[Qty]`, `Tbl[[#This Row],[Qty]]`, `Tbl[#Totals]`, `Tbl`. */
import { parseStructRef } from '@borgar/fx/xlsx';
import { CellError } from '../../cells/value';
import { ERRORS, Keep, Reference } from '../values';
import type { Code, Compiler, TablePlace } from './code';
import { Place } from './places';

/** Undefined where there is no such table. */
export function tableCode(text: string, to: Compiler): Code | undefined {
  const {
    workbookName,
    table: name,
    columns,
    sections,
  } = parseStructRef(text.includes('[') ? text : `${text}[]`) ?? {};
  if (workbookName) throw new Keep(`It refers to another workbook: ${text}.`);
  const table = name ? to.book.tableNamed(name) : to.book.tableAt(to.from);
  if (!table) return undefined;
  const across = columnsOf(table, columns ?? []);
  if (!across) return failing(new CellError('#REF!', `${table.name} has no column as in ${text}.`));
  if (sections?.includes('this row')) return thisRow(table, across, to);
  const rows = rowsOf(table, sections ?? []);
  if (!rows) return failing(new CellError('#REF!', `${table.name} has no such part: ${text}.`));
  return placed(fixedPlace(table.sheet, rows, across), to);
}

const failing = (error: CellError): Code => ({ value: () => error, scalar: () => error, isSingle: true });

const folded = (header: string): string => header.replace(/\s+/g, ' ').trim().toLowerCase();

function columnsOf({ area, columns }: TablePlace, names: readonly string[]): [number, number] | undefined {
  if (names.length === 0) return [area.left, area.right];
  const places = names.map((name) => {
    const exact = columns.findIndex((column) => column.toLowerCase() === name.toLowerCase());
    return exact >= 0 ? exact : columns.findIndex((column) => folded(column) === folded(name));
  });
  if (places.includes(-1)) return undefined;
  return [area.left + Math.min(...places), area.left + Math.max(...places)];
}

const dataRows = ({ area, hasHeader, hasTotals }: TablePlace): [number, number] => [
  area.top + (hasHeader ? 1 : 0),
  area.bottom - (hasTotals ? 1 : 0),
];

function rowsOf(table: TablePlace, sections: readonly string[]): [number, number] | undefined {
  const { area, hasHeader, hasTotals } = table;
  const data = dataRows(table);
  const parts = (sections.length === 0 ? ['data'] : sections).map((section): [number, number] | undefined => {
    if (section === 'all') return [area.top, area.bottom];
    if (section === 'headers') return hasHeader ? [area.top, area.top] : undefined;
    if (section === 'totals') return hasTotals ? [area.bottom, area.bottom] : undefined;
    return data;
  });
  const found = parts.filter((part) => part !== undefined);
  if (found.length === 0) return undefined;
  return [Math.min(...found.map(([top]) => top)), Math.max(...found.map(([, bottom]) => bottom))];
}

const fixed = (at: number) => ({ at, isFixed: true });
const OWN_ROW = { at: 0, isFixed: false };

const fixedPlace = (
  sheet: number,
  rows: readonly [number, number],
  columns: readonly [number, number],
): Place => new Place([sheet, sheet], fixed(rows[0]), fixed(columns[0]), fixed(rows[1]), fixed(columns[1]));

function placed(place: Place, to: Compiler): Code {
  to.reads(place);
  const value: Code['value'] = (frame) => new Reference(place.areas(frame));
  return {
    value,
    scalar: (frame) => frame.one(value(frame)),
    isSingle: place.isCell,
  };
}

/** The cells in the formula's own row; outside the table there are none. */
function thisRow(table: TablePlace, [left, right]: readonly [number, number], to: Compiler): Code {
  const { sheet } = table;
  const [top, bottom] = dataRows(table);
  const place = new Place([sheet, sheet], OWN_ROW, fixed(left), OWN_ROW, fixed(right));
  const { value, scalar, isSingle } = placed(place, to);
  const isIn = (row: number) => row >= top && row <= bottom;
  return {
    value: (frame) => (isIn(frame.row) ? value(frame) : ERRORS['#VALUE!']),
    scalar: (frame) => (isIn(frame.row) ? scalar(frame) : ERRORS['#VALUE!']),
    isSingle,
  };
}
