import { columnMark } from './marks';

export type TableCell = number | string;

/** A table of the data sheet: only the rows that formulas of the copy ask for. */
export interface DataTable {
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: TableCell[][];
}

/** The tables that the native formulas of one copy look up, collected while the formulas are written. */
export class DataTables {
  readonly tables = new Map<string, DataTable>();

  /**
   * Adds a row under its key, the first of its cells, and gives the text that finds column `at` of it. What `key`
   * (worksheet text) names and the table does not have is #N/A, as a name that stands in no table is.
   */
  exact(table: Omit<DataTable, 'rows'>, row: readonly TableCell[]): (key: string, at: number) => string {
    const id = this.place(table, row);
    const rows = this.tables.get(id)?.rows ?? [];
    if (!rows.some((known) => sameKey(known[0], row[0]))) rows.push([...row]);
    return (key, at) => `INDEX(${columnMark(id, at)},MATCH(${key},${columnMark(id, 0)},0))`;
  }

  /** A whole table whose first column climbs; gives the text of column `at` in the last row not above `value`. */
  stepped(
    table: Omit<DataTable, 'rows'>,
    rows: readonly (readonly TableCell[])[],
  ): (value: string, at: number) => string {
    const column = this.columns(table, rows);
    return (value, at) => `INDEX(${column(at)},MATCH(${value},${column(0)},1))`;
  }

  /** A whole table; gives the text of its columns. */
  columns(table: Omit<DataTable, 'rows'>, rows: readonly (readonly TableCell[])[]): (at: number) => string {
    let id = table.title;
    for (let n = 2; this.tables.has(id) && !sameRows(this.tables.get(id)?.rows ?? [], rows); n++)
      id = `${table.title} (${n})`;
    if (!this.tables.has(id)) this.tables.set(id, { ...table, title: id, rows: rows.map((row) => [...row]) });
    return (at) => columnMark(id, at);
  }

  /** The table of this title where the row fits in; another of the same title where it says otherwise. */
  private place(table: Omit<DataTable, 'rows'>, row: readonly TableCell[]): string {
    for (let n = 1; ; n++) {
      const id = n === 1 ? table.title : `${table.title} (${n})`;
      const present = this.tables.get(id);
      if (!present) {
        this.tables.set(id, { ...table, title: id, rows: [] });
        return id;
      }
      const known = present.rows.find((one) => sameKey(one[0], row[0]));
      const fits = present.heads.join('\n') === table.heads.join('\n');
      if (fits && (!known || sameRow(known.slice(1), row.slice(1)))) return id;
    }
  }
}

/** Spreadsheet programs look names up without regard to capitals. */
const sameKey = (a: TableCell | undefined, b: TableCell | undefined): boolean =>
  String(a).toLowerCase() === String(b).toLowerCase();

const sameRow = (a: readonly TableCell[], b: readonly TableCell[]): boolean =>
  a.length === b.length && a.every((cell, i) => cell === b[i]);

const sameRows = (a: readonly (readonly TableCell[])[], b: readonly (readonly TableCell[])[]): boolean =>
  a.length === b.length && a.every((row, i) => sameRow(row, b[i] ?? []));
