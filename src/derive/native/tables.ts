import { columnMark } from './marks';

export type TableCell = number | string;

/** A table of the data sheet. */
export interface DataTable {
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: TableCell[][];
}

/** The tables that the native formulas of one copy look up, collected while the formulas are written. */
export class DataTables {
  readonly tables = new Map<string, DataTable>();

  /** Rows that went into a table before, which many calls of one copy share. */
  private readonly added = new Map<string, Set<readonly (readonly TableCell[])[]>>();

  private readonly byKey = new Map<string, Map<string, readonly TableCell[]>>();

  /**
   * Adds rows under their keys, the first of their cells, to the table of this title, or to another where it says
   * otherwise of one of them. Gives the text that finds the row which `key` (worksheet text) names, and the text of a
   * column in it; what the table does not have is #N/A, as a name that stands in no table is. The key itself is asked
   * for wildcards by the caller.
   */
  exact(
    table: Omit<DataTable, 'rows'>,
    rows: readonly (readonly TableCell[])[],
  ): { readonly row: (key: string) => string; readonly cell: (row: string, at: number) => string } {
    const id = this.addedAs(table, rows) ?? this.add(table, rows);
    return {
      row: (key) => `MATCH(${key},${columnMark(id, 0)},0)`,
      cell: (row, at) => `INDEX(${columnMark(id, at)},${row})`,
    };
  }

  private addedAs(
    { title, heads }: Omit<DataTable, 'rows'>,
    rows: readonly (readonly TableCell[])[],
  ): string | undefined {
    const isIt = (id: string): boolean =>
      this.added.get(id)?.has(rows) === true && this.tables.get(id)?.heads.join('\n') === heads.join('\n');
    return [...this.added.keys()].find((id) => id.startsWith(title) && isIt(id));
  }

  private add(table: Omit<DataTable, 'rows'>, rows: readonly (readonly TableCell[])[]): string {
    const id = this.place(table, rows);
    this.added.set(id, (this.added.get(id) ?? new Set()).add(rows));
    const known = this.byKey.get(id) ?? new Map<string, readonly TableCell[]>();
    for (const row of rows) {
      if (known.has(keyOf(row[0]))) continue;
      known.set(keyOf(row[0]), row);
      this.tables.get(id)?.rows.push([...row]);
    }
    return id;
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

  /** The table of this title where the rows fit in; another of the same title where it says otherwise. */
  private place(table: Omit<DataTable, 'rows'>, rows: readonly (readonly TableCell[])[]): string {
    for (let n = 1; ; n++) {
      const id = n === 1 ? table.title : `${table.title} (${n})`;
      const present = this.tables.get(id);
      const known = this.byKey.get(id);
      if (!present) {
        this.tables.set(id, { ...table, title: id, rows: [] });
        this.byKey.set(id, new Map());
        return id;
      }
      const isSame = (row: readonly TableCell[]): boolean => {
        const one = known?.get(keyOf(row[0]));
        return one === undefined || one === row || sameRow(one.slice(1), row.slice(1));
      };
      if (known && present.heads.join('\n') === table.heads.join('\n') && rows.every(isSame)) return id;
    }
  }
}

/** Spreadsheet programs look names up without regard to capitals. */
export const keyOf = (cell: TableCell | undefined): string => String(cell).toLowerCase();

const sameRow = (a: readonly TableCell[], b: readonly TableCell[]): boolean =>
  a.length === b.length && a.every((cell, i) => cell === b[i]);

const sameRows = (a: readonly (readonly TableCell[])[], b: readonly (readonly TableCell[])[]): boolean =>
  a.length === b.length && a.every((row, i) => sameRow(row, b[i] ?? []));
